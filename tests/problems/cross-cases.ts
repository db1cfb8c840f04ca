// One case or more for each code of rows that do not fit one another, with the exact words.
import type { ProblemCase } from './problem-case.js';
import { spoil } from './spoil-sheets.js';

const schemes = (header: string, ...rows: readonly string[]): readonly string[] => [
  `scheme,step,zone,layer,paint${header}`,
  ...rows,
];

const hues = Array.from({ length: 5001 }, (_, at) => `hue ${at}`);

const likes = (...rows: readonly string[]): readonly string[] =>
  schemes(
    ',like',
    'red line,1,whole,base coat,brick red,',
    'red line,2,whole,wash,earth wash,',
    ...rows.map((row) => `blue line,${row},red line`),
  );
const ofRed = { army: ['unit,figure,scheme,count', 'first spears,spearman,red line,20'] };

const likeCases: readonly ProblemCase[] = [
  spoil(
    'like-circle',
    { ...ofRed, schemes: [...likes(), 'blue line,,,,,green line', 'green line,,,,,Blue Line'] },
    'schemes.csv row 5, "like" (F5): these schemes begin like one another: blue line, green line, blue line. Write one of them out, and leave its like blank.',
  ),
  spoil(
    'like-nothing',
    { ...ofRed, schemes: likes(',cloak,,brick red') },
    'schemes.csv row 4, "like" (F4): nothing in "red line" is what this row is about. Name a zone, layer or step of that scheme; what is new needs zone, layer and paint.',
  ),
  spoil(
    'like-two-ways',
    { ...ofRed, schemes: likes('2,,,brick red', ',,wash,brick red') },
    'schemes.csv row 5, "paint" (E5): "brick red" changes what row 4 changes too, and neither says more closely what is meant. Say zone, layer and step of both.',
  ),
];

const unknownCases: readonly ProblemCase[] = [
  spoil(
    'unknown-paint',
    {
      schemes: schemes('', 'red line,1,whole,base coat,brik red', 'red line,2,whole,wash,moon dust'),
      log: ['date,paint,used ml', '2026-03-01,Earth  Wahs,0.4'],
    },
    'schemes.csv row 2, "paint" (E2): no sheet of yours knows the paint "brik red". Add it to the pots, paints or offers sheet, or spell it as there: brick red.',
    'schemes.csv row 3, "paint" (E3): no sheet of yours knows the paint "moon dust". Add it to the pots, paints or offers sheet.',
    'log.csv row 2, "paint" (B2): no sheet of yours knows the paint "Earth Wahs". Add it to the pots, paints or offers sheet, or spell it as there: earth wash.',
  ),
  spoil(
    'rows-maybe-not-owned',
    { pots: ['paint,size ml,Owned,Have notes', 'brick red,17,yes,no', 'earth wash,24,no,yes'] },
    'pots.csv row 1, "Owned" (C1): this column is not read, so that each row counts as a pot on the shelf, also where it says "no" (row 3). Take the rows out that you do not own; if all are yours, let its header end in "notes".',
  ),
  spoil(
    'rows-maybe-not-owned',
    { pots: ['paint,size ml,vorhanden?', 'brick red,17,x', 'earth wash,24,'] },
    'pots.csv row 1, "vorhanden?" (C1): this column is not read, so that each row counts as a pot on the shelf, also where it says "" (row 3). Take the rows out that you do not own; if all are yours, let its header end in "notes".',
  ),
  spoil(
    'unknown-column',
    { columns: ['sheet,column,called', 'pots,lefft,size ml', 'army,moon phase,count'] },
    'columns.csv row 2, "column" (B2): "lefft" is no column of that sheet. Write the name of one, such as left; leave it blank for a column of your own.',
    'columns.csv row 3, "column" (B3): "moon phase" is no column of that sheet. Write the name of one; leave it blank for a column of your own.',
  ),
  spoil(
    'unknown-header',
    { columns: ['sheet,column,called', 'pots,size ml,sise ml', 'pots,left,moon phase'] },
    'columns.csv row 2, "called" (C2): no header of that sheet is "sise ml". Write it as it stands there, such as size ml, or take this row out.',
    'columns.csv row 3, "called" (C3): no header of that sheet is "moon phase". Write it as it stands there, or take this row out.',
  ),
  spoil(
    'unknown-figure',
    {
      army: ['unit,figure,count', 'first spears,speerman,20'],
      zones: ['zone,parts,figure', 'coat,head,archer'],
    },
    'zones.csv row 2, "figure" (C2): the figures sheet does not know "archer". Add it there.',
    'army.csv row 2, "figure" (B2): the figures sheet does not know "speerman". Add it there, or spell it as there: spearman.',
  ),
  spoil(
    'unknown-scheme',
    { army: ['unit,figure,scheme,count', 'first spears,spearman,red lime,20'] },
    'army.csv row 2, "scheme" (C2): the schemes sheet does not know "red lime". Add it there, or spell it as there: red line.',
  ),
  spoil(
    'unknown-unit',
    { log: ['date,paint,unit,used ml', '2026-03-01,brick red,first spear,0.4'] },
    'log.csv row 2, "unit" (C2): the army sheet does not know "first spear". Add it there, or spell it as there: first spears.',
  ),
  spoil(
    'unknown-zone',
    { schemes: schemes('', 'red line,1,tunik,base coat,brick red', 'red line,2,everywhere,wash,earth wash') },
    'schemes.csv row 2, "zone" (C2): "tunik" is neither a part nor a zone. Add it to the zones sheet, or write tunic.',
    'schemes.csv row 3, "zone" (C3): "everywhere" is neither a part nor a zone. Add it to the zones sheet.',
  ),
  spoil(
    'unknown-step',
    {
      army: ['unit,figure,count,done', 'first spears,spearman,20,3', 'second spears,spearman,20,2'],
      log: ['date,paint,unit,step,figures,used ml', '2026-03-01,brick red,second spears,4,10,0.4'],
    },
    'army.csv row 2, "done" (D2): "3" is not a step of its scheme. Write one of its steps: 1 or 2.',
    'log.csv row 2, "step" (D2): "4" is not a step of its scheme. Write one of its steps: 1 or 2.',
  ),
  spoil(
    'scheme-needed',
    {
      schemes: schemes('', 'red line,1,whole,base coat,brick red', 'brown line,1,whole,base coat,earth wash'),
      army: ['unit,figure,scheme,count', 'first spears,spearman,,20', 'others,spearman,Brown Line,20'],
    },
    'army.csv row 2, "scheme" (C2): there are several schemes, and this unit names none. Write red line or brown line.',
  ),
];

const repeatCases: readonly ProblemCase[] = [
  spoil(
    'repeated-name',
    {
      paints: ['paint', 'brick red', 'Brick  red'],
      offers: ['shop,offer,price,paint,size ml', 'Quay,brick,3,brick red,17'],
      shops: ['shop', 'Quay', 'quay'],
      figures: ['figure,eye mm', 'spearman,28', 'Spearman,30'],
      zones: ['zone,parts,figure', 'coat,head,', 'coat,neck,spearman', 'Coat,hands,'],
      army: ['unit,figure,count', 'first spears,spearman,20', 'First Spears,spearman,20'],
      settings: ['name,value', 'currency,EUR', 'Currency,USD'],
    },
    'paints.csv row 3, "paint" (A3): "Brick red" already stands in row 2. Give each a name of its own, or take one of the rows out.',
    'shops.csv row 3, "shop" (A3): "quay" already stands in row 2. Give each a name of its own, or take one of the rows out.',
    'figures.csv row 3, "figure" (A3): "Spearman" already stands in row 2. Give each a name of its own, or take one of the rows out.',
    'zones.csv row 4, "zone" (A4): "Coat" already stands in row 2. Give each a name of its own, or take one of the rows out.',
    'army.csv row 3, "unit" (A3): "First Spears" already stands in row 2. Give each a name of its own, or take one of the rows out.',
    'settings.csv row 3, "name" (A3): "Currency" already stands in row 2. Give each a name of its own, or take one of the rows out.',
  ),
  spoil(
    'buy-and-sure',
    { settings: ['name,value', 'Sure %,90', 'Buy,goes'] },
    'settings.csv row 3, "name" (A3): "Buy" and sure % in row 2 say two different things. Take one of the rows out: sure % is for an order with which nothing runs out, buy for one that others follow.',
  ),
  spoil(
    'repeated-treatment',
    { schemes: schemes('', 'red line,1,whole,wash,earth wash', 'Red line,1,Whole,Wash,Earth wash') },
    'schemes.csv row 3, "paint" (E3): this step, zone, layer and paint already stand in row 2. Take one of the rows out; more coats go into the coats column.',
  ),
  spoil(
    'step-out-of-order',
    { schemes: schemes('', 'red line,2,whole,wash,earth wash', 'red line,1,whole,base coat,brick red') },
    'schemes.csv row 3, "step" (B3): step 1 stands below step 2. Steps are painted in the order of their numbers: renumber it, or move the row.',
  ),
];

const paintCases: readonly ProblemCase[] = [
  spoil(
    'also-called-twice',
    { paints: ['paint,also called', 'brick red,old red', 'earth wash,"mud, Old red"'] },
    'paints.csv row 3, "also called" (B3): "Old red" is already another name of "brick red". One name can mean one paint only: take it from one of the two.',
  ),
  spoil(
    'also-called-own',
    { paints: ['paint,also called', 'brick red,Earth wash', 'earth wash,'] },
    'paints.csv row 2, "also called" (B2): "Earth wash" has a row of its own in the paints sheet. It stays a paint of its own; take it out here, or take out its row.',
  ),
  spoil(
    'paint-contradiction',
    {
      pots: ['paint,size ml,kind,hex', 'earth wash,24,Wash,#ABCDEF', 'earth wash,24,,', 'brick red,17,,'],
      paints: ['paint,kind,hex', 'Earth Wash,colour,abcdef'],
    },
    'paints.csv row 2, "kind" (B2): "colour" does not agree with "Wash" in row 2 of the pots sheet. A paint can have one value only: write the same in both places, or leave one blank.',
  ),
  spoil(
    'paint-not-had',
    {
      paints: ['paint', 'bone'],
      schemes: schemes('', 'red line,1,whole,base coat,bone', 'red line,2,face,wash,Bone'),
    },
    'schemes.csv row 2, "paint" (E2): no pot and no offer has the paint "bone". It will be listed as unmet; add a pot or an offer of it.',
  ),
  spoil(
    'too-many-paints',
    {
      // Five thousand and one, the first of them twice in other letters; a scheme that no unit is painted in does not count.
      pots: ['paint,size ml', ...hues.map((hue) => `${hue},17`)],
      schemes: schemes(
        '',
        'blue line,1,whole,base coat,hue 5000',
        'line 0,1,head,detail,HUE 0',
        ...hues.map((hue, at) => `line ${Math.floor(at / 900)},${1 + (at % 900)},whole,base coat,${hue}`),
      ),
      army: [
        'unit,figure,scheme,count',
        ...[0, 1, 2, 3, 4, 5].map((line) => `spears ${line},spearman,line ${line},20`),
      ],
      log: ['date,paint,used ml', '2026-03-01,hue 1,0.4'],
    },
    'schemes.csv row 5004, "paint" (E5004): this is paint number 5001 that the army is painted with, and 5000 can be planned at once. Take some units out of the army sheet and plan them in sheets of their own.',
  ),
];

const offers = (...rows: readonly string[]): readonly string[] => [
  'shop,offer,price,paint,size ml,available',
  ...rows,
];

const inRange = ['paint,size ml,range', 'brick red,17,Depot', 'earth wash,24,'];
const byRange = (...rows: readonly string[]): readonly string[] => [
  'shop,offer,price,paint,size ml,range,code',
  ...rows,
];
const crowd = Array.from({ length: 1000 }, (_, at) => `hue ${at},17,Depot`);
const manyRanges = Array.from({ length: 151 }, (_, at) => `Quay,o${at},3,,17,Depot,`);

const offerCases: readonly ProblemCase[] = [
  spoil(
    'unknown-range',
    { pots: inRange, offers: byRange('Quay,pot,3,,17,Depott,', 'Quay,tin,3,,17,Moon,') },
    'offers.csv row 2, "range" (F2): no paint of yours is of the range "Depott". Write it into the range column of pots or paints, or spell it as there: Depot.',
    'offers.csv row 3, "range" (F3): no paint of yours is of the range "Moon". Write it into the range column of pots or paints.',
  ),
  spoil(
    'range-and-paint',
    {
      pots: inRange,
      offers: byRange('Quay,pot,3,earth wash,17,Depot,', 'Quay,tin,3,,17,Depot,2000310000217'),
    },
    'offers.csv row 2, "paint" (D2): "earth wash" is of one paint, and this row prices the whole range "Depot". Leave one of the two cells blank.',
    'offers.csv row 3, "code" (G3): "2000310000217" is of one paint, and this row prices the whole range "Depot". Leave one of the two cells blank.',
  ),
  spoil(
    'too-many-in-all',
    {
      pots: [
        'paint,size ml,pots',
        'brick red,17,',
        'earth wash,24,',
        ...crowd.slice(0, 150).map(() => 'slate,17,1000'),
      ],
    },
    'pots.csv row 153, "pots" (C153): with "1000" here, the rows of this sheet come to more than 150000 pots. Leave out what you do not paint with.',
  ),
  spoil(
    'too-many-in-all',
    {
      pots: ['paint,size ml,range', 'brick red,17,', 'earth wash,24,', ...crowd],
      offers: byRange(...manyRanges),
    },
    'offers.csv row 152, "range" (F152): with "Depot" here, the rows of this sheet come to more than 150000 offers. Leave out what you do not paint with.',
  ),
  spoil(
    'offer-without-price',
    { offers: offers('Quay,pair,,brick red,17,', 'Quay,pair,,earth wash,24,', 'Quay,one,3,brick red,17,') },
    'offers.csv row 2, "price" (C2): the offer "pair" has no price on any of its rows. Write what the whole offer costs.',
  ),
  spoil(
    'offer-two-prices',
    { offers: offers('Quay,pair,5.90,brick red,17,', 'quay,Pair,6.00,earth wash,24,') },
    'offers.csv row 3, "price" (C3): "6.00" is a second price for this offer, after "5.90" in row 2. Write the price of the whole offer on one row.',
  ),
  spoil(
    'offer-price-repeated',
    { offers: offers('Quay,pair,5.90,brick red,17,', 'Quay,pair,5.9,earth wash,24,') },
    'offers.csv row 3, "price" (C3): "5.9" already stands in row 2 of this offer. It is taken once, for the whole set; pots sold one by one need offers of their own.',
  ),
  // A millilitre is usually 20 cents in these droppers. Sets count by all their pots; pots and cans are kinds of their own.
  spoil(
    'price-out-of-line',
    {
      offers: [
        'shop,offer,price,paint,size ml,pots,container',
        'Quay,brick red,3.40,brick red,17,,dropper',
        'Quay,brick red of old,340,brick red,17,,dropper',
        'Quay,earth wash,3.40,earth wash,17,,dropper',
        'Quay,both,,brick red,17,10,dropper',
        'Quay,both,0.85,earth wash,17,10,dropper',
        'Quay,at the edge,68.00,brick red,17,,dropper',
        'Quay,mixed,900,brick red,17,,dropper',
        'Quay,mixed,,earth wash,24,,pot',
        'Quay,earth wash 24,900,earth wash,24,,pot',
        'Mill,brick red,3.40,brick red,17,,dropper',
        'Mill,earth wash,3.40,earth wash,17,,dropper',
      ],
      shops: ['shop,postage', 'Quay,3', 'Mill,3'],
    },
    'offers.csv row 3, "price" (C3): at "340" a millilitre costs 100 times what is usual among your offers in a dropper. Check the decimal point of the price, the size and the number of pots; if all are right, leave them as they are.',
    'offers.csv row 6, "price" (C6): at "0.85" a millilitre costs 1/80 of what is usual among your offers in a dropper. Check the decimal point of the price, the size and the number of pots; if all are right, leave them as they are.',
  ),
  spoil(
    'offer-two-limits',
    { offers: offers('Quay,pair,5.90,brick red,17,2', 'Quay,pair,,earth wash,24,3') },
    'offers.csv row 3, "available" (F3): "3" is a second limit for this offer, after "2" in row 2. Write how many of the whole offer can be had on one row.',
  ),
  spoil(
    'shop-without-row',
    {
      offers: offers('Quey,one,3,brick red,17,', 'quey,two,3,brick red,17,'),
      shops: ['shop,postage', 'Quay,3'],
    },
    'offers.csv row 2, "shop" (A2): the shops sheet does not know "Quey". Its postage counts as 0; add it there, or spell it as there: Quay.',
  ),
  spoil(
    'free-below-least',
    {
      offers: offers('Quay,one,3,brick red,17,'),
      shops: ['shop,postage,free from,least order', 'Quay,3,20,25'],
    },
    'shops.csv row 2, "free from" (C2): postage is free from "20", which is below the least order of "25". Check both sums.',
  ),
  spoil(
    'least-out-of-reach',
    {
      offers: [
        'shop,offer,price,paint,size ml,available',
        'Quay,one,3,brick red,17,2',
        'Lock,one,3,brick red,17,',
        'Weir,one,12.50,brick red,17,2',
      ],
      shops: ['shop,postage,free from,least order', 'Quay,3,,25', 'Lock,3,,25', 'Weir,3,,25'],
    },
    'shops.csv row 2, "least order" (D2): all offers of this shop together do not come to its least order of "25". So nothing can be bought there: check both, or add what else it sells.',
  ),
  spoil(
    'free-from-nothing',
    {
      offers: offers('Quay,one,3,brick red,17,', 'Lock,one,3,brick red,17,', 'Weir,one,3,brick red,17,'),
      shops: ['shop,postage,free from,least order', 'Quay,3.90,0,10', 'Lock,0,0,', 'Weir,3.90,,'],
    },
    'shops.csv row 2, "free from" (C2): "0" means that this shop never asks for its postage of "3.90". Leave this cell blank if postage is always paid; if none ever is, leave postage blank too.',
  ),
  spoil(
    'paint-maybe-misspelt',
    {
      pots: ['paint,size ml', 'brik red,17', 'brick red,17', 'BRIK RED,12', 'earth wash,24'],
    },
    'pots.csv row 2, "paint" (A2): no scheme uses the paint "brik red", and no other sheet names it; one that is used is called brick red. Write brick red if that is meant; if this is a paint of its own, give it a row in the paints sheet too.',
  ),
  spoil(
    'paint-maybe-misspelt',
    {
      pots: ['paint,size ml', 'earth wash,24'],
      paints: ['paint,kind', 'brick red,colour', 'earth wish,wash'],
      offers: ['shop,offer,price,paint,size ml', 'Quay,one,3,brick red,17', 'Quay,two,3,earth wahs,17'],
    },
    'paints.csv row 3, "paint" (A3): no scheme uses the paint "earth wish", and no other sheet names it; one that is used is called earth wash. Write earth wash if that is meant; if this is a paint of its own, give it a row in the paints sheet too.',
    'offers.csv row 3, "paint" (D3): no scheme uses the paint "earth wahs", and no other sheet names it; one that is used is called earth wash. Write earth wash if that is meant; if this is a paint of its own, give it a row in the paints sheet too.',
  ),
];

const zoneCases: readonly ProblemCase[] = [
  spoil(
    'zone-name-taken',
    { zones: ['zone,parts', 'Tunic,front trunk', 'head,neck'] },
    'zones.csv row 2, "zone" (A2): "Tunic" is already a part or a ready-made zone. Give your zone another name.',
    'zones.csv row 3, "zone" (A3): "head" is already a part or a ready-made zone. Give your zone another name.',
  ),
  spoil(
    'zone-in-zone',
    { zones: ['zone,parts', 'coat,"Trousers, head"', 'robe,"coat, feet"'] },
    'zones.csv row 2, "parts" (B2): "Trousers" is a zone, and a zone is made of parts only. Write its parts instead: thighs, lower legs 50%.',
    'zones.csv row 3, "parts" (B3): "coat" is a zone, and a zone is made of parts only. Write its parts instead.',
  ),
  spoil(
    'zone-in-zone',
    { zones: ['zone,parts', 'coat,"Trousers, head"'], settings: ['name,value', 'share trousers,37.5%'] },
    'zones.csv row 2, "parts" (B2): "Trousers" is a zone, and a zone is made of parts only. Write its parts instead: thighs, lower legs 37.5%.',
  ),
  spoil(
    'part-over-whole',
    { zones: ['zone,parts', 'coat,"thighs 60%, thighs 55%, head"', 'robe,"feet 50%, feet 50%"'] },
    'zones.csv row 2, "parts" (B2): "thighs" comes to 115% in this zone. Bring its shares down to 100% at the most.',
  ),
  spoil(
    'zone-not-on-figure',
    {
      schemes: schemes('', 'red line,1,whole,base coat,brick red', 'red line,2,Base,wash,earth wash'),
      zones: ['zone,parts,figure', 'tack,horse,'],
    },
    'schemes.csv row 3, "zone" (C3): the zone "base" has no part on the figure "spearman". Nothing is painted there; change the zone, or what the figure has.',
  ),
];

const mixCases: readonly ProblemCase[] = [
  spoil(
    'share-missing',
    {
      schemes: schemes(',share', 'red line,1,face,glaze,brick red,50%', 'red line,1,face,glaze,earth wash,'),
    },
    'schemes.csv row 3, "share" (F3): this row belongs to a mix and has no share. Write its share, such as 50%, or give it a step of its own.',
  ),
  spoil(
    'shares-of-two-kinds',
    {
      schemes: schemes(',share', 'red line,1,face,glaze,brick red,50%', 'red line,1,face,glaze,earth wash,1'),
    },
    'schemes.csv row 3, "share" (F3): "1" is not counted like "50%" in the same mix. Write all shares of a mix in percent, or all in parts.',
  ),
  spoil(
    'shares-not-whole',
    {
      schemes: schemes(
        ',share',
        'red line,1,face,glaze,brick red,50%',
        'red line,1,face,glaze,earth wash,40%',
      ),
    },
    'schemes.csv row 2, "share" (F2): the shares of this mix come to 90%. Bring them to 100%.',
  ),
  // Thirds come to 99, rounded up to 101; a hundredth beyond is no rounding any more. 29.4 + 34.8 + 34.8 is 99 too, which
  // binary fractions make a hair less.
  spoil(
    'shares-not-whole',
    {
      pots: ['paint,size ml', 'brick red,17', 'earth wash,24', 'bone,17'],
      schemes: schemes(
        ',share',
        'red line,1,face,glaze,brick red,33%',
        'red line,1,face,glaze,earth wash,66%',
        'red line,2,face,glaze,brick red,34%',
        'red line,2,face,glaze,earth wash,67%',
        'red line,3,face,glaze,brick red,33%',
        'red line,3,face,glaze,earth wash,65.9910%',
        'red line,4,face,glaze,brick red,34%',
        'red line,4,face,glaze,earth wash,67.0090%',
        'red line,5,face,glaze,brick red,29.4%',
        'red line,5,face,glaze,earth wash,34.8%',
        'red line,5,face,glaze,bone,34.8%',
      ),
    },
    'schemes.csv row 6, "share" (F6): the shares of this mix come to 98.99%. Bring them to 100%.',
    'schemes.csv row 8, "share" (F8): the shares of this mix come to 101.01%. Bring them to 100%.',
  ),
  spoil(
    'mix-contradiction',
    {
      schemes: schemes(
        ',share,coats,method,area %,thin',
        'red line,1,face,glaze,brick red,2,1,,60,',
        'red line,1,face,glaze,earth wash,1,2,brush,60%,1',
      ),
    },
    'schemes.csv row 3, "coats" (G3): "2" is not what the first row of the mix says, "1". Coats, method, area % and thin of a mix stand on its first row: leave this cell blank.',
    'schemes.csv row 3, "method" (H3): "brush" is not what the first row of the mix says. Coats, method, area % and thin of a mix stand on its first row: leave this cell blank.',
    'schemes.csv row 3, "thin" (J3): "1" is not what the first row of the mix says. Coats, method, area % and thin of a mix stand on its first row: leave this cell blank.',
  ),
];

export const crossCases: readonly ProblemCase[] = [
  ...likeCases,
  ...unknownCases,
  ...repeatCases,
  ...paintCases,
  ...offerCases,
  ...zoneCases,
  ...mixCases,
];
