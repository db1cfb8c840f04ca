// Policy: the army painted on paper, once for each draw. In: what is bought first, what should stand on the shelf at each stage. Out: for
// each draw the cash, the orders, and what is left.
import { at, numberAt } from '../../model/at.js';
import type { StagedWork } from '../../model/draws.js';
import type { Order } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import { letOthers } from '../solver/let-others.js';
import type { Goods } from './list-goods.js';
import type { Wants } from './list-wants.js';
import { type FindRefill, type Piece, piecesOf, type Refill, type Wanted } from './open-refill.js';

export interface Paper {
  readonly work: StagedWork;
  readonly goods: Goods;
  readonly refill: FindRefill;
}

/** How one buys. */
export interface WayToBuy {
  readonly first: Pick<Order, 'lines' | 'totalMinor'>;
  readonly wants: Wants;
}

/** One draw, painted to the end. */
export interface Painted {
  /** Goods and postage of all orders. */
  readonly cashMinor: number;
  /** Orders after the first. */
  readonly orders: number;
  /** What was bought and is left, at what was paid for it. */
  readonly leftOverMinor: number;
  /** Whether something was needed that could not be had. */
  readonly isLacking: boolean;
  /** The stage of the first of these orders, and its cash; undefined where there was none. */
  readonly next: { readonly stage: number; readonly cashMinor: number } | undefined;
}

/**
 * Stage by stage; where a pot runs dry an order is made, for all that is then left to do: of each paint what is wanted on the shelf
 * at this stage, less what stands there. Of a paint that is dry after a share of its stage, that share is done. As long as
 * something is still missing, another order follows. Nobody learns from what he used: he goes on as he planned.
 */
export async function paintOnPaper(paper: Paper, { first, wants }: WayToBuy): Promise<Painted[]> {
  const { units, drawing } = paper.work;
  const bought = piecesOf(first.lines, paper.goods);
  const left = leftAfter(first, paper.goods);
  const painted: Painted[] = [];
  for (let draw = 0; draw < drawing.draws; draw++) {
    const going: Going = { ...begin(draw, paper), left: left.slice(), cashMinor: first.totalMinor };
    for (const piece of bought) put(piece, going, paper);
    for (let stage = 0; stage < units.length; stage++) {
      if (isDryAt(stage, going, paper)) await paintStage(stage, going, paper, wants);
      else layPaint(stage, going, paper);
    }
    painted.push(endOf(going));
    await letOthers();
  }
  return painted;
}

/** One draw on the way; by place of the paint where it is a list. */
interface Going {
  readonly draw: number;
  readonly shelfMl: Float64Array;
  /** How many of each offer can still be had. */
  readonly left: number[];
  /** What was bought, in ml of this draw, and what was paid for it. */
  readonly boughtMl: Float64Array;
  readonly paidMinor: Float64Array;
  /** Paid for what this army does not need. */
  spareMinor: number;
  cashMinor: number;
  orders: number;
  isLacking: boolean;
  next: Painted['next'];
}

function begin(draw: number, { work: { paints } }: Paper): Omit<Going, 'left' | 'cashMinor'> {
  return {
    shelfMl: Float64Array.from(paints, ({ haveMl }) => haveMl[draw] as number),
    boughtMl: new Float64Array(paints.length),
    paidMinor: new Float64Array(paints.length),
    ...{ draw, spareMinor: 0, orders: 0, isLacking: false, next: undefined },
  };
}

function leftAfter({ lines }: WayToBuy['first'], { market, offerAt }: Goods): number[] {
  const left = market.offers.map(({ available }) => available ?? Number.POSITIVE_INFINITY);
  for (const line of lines) {
    const place = offerAt(line);
    if (place !== undefined) left[place] = at(left, place) - line.count;
  }
  return left;
}

/** Pots come to the shelf. */
function put({ place, container, ml, costMinor }: Piece, going: Going, { work }: Paper): void {
  if (place < 0) {
    going.spareMinor += costMinor;
    return;
  }
  const gotMl = ml * (work.gainOf(container)?.[going.draw] ?? 1);
  going.shelfMl[place] = (going.shelfMl[place] as number) + gotMl;
  going.boughtMl[place] = (going.boughtMl[place] as number) + gotMl;
  going.paidMinor[place] = (going.paidMinor[place] as number) + costMinor;
}

/** Orders for as long as something is dry that can be had, and lays the stage's paint. */
async function paintStage(stage: number, going: Going, paper: Paper, wants: Wants): Promise<void> {
  while (isDryAt(stage, going, paper)) {
    const refill = await paper.refill(wantedAt(stage, going, paper, wants), going.left);
    if (refill.counts.length === 0) break;
    receive(refill, stage, going, paper);
  }
  layPaint(stage, going, paper);
}

function layPaint(stage: number, going: Going, { work }: Paper): void {
  for (let place = 0; place < work.paints.length; place++) {
    const restMl = (going.shelfMl[place] as number) - needAt(work, place, stage, going.draw);
    if (restMl < -sameMl) going.isLacking = true;
    going.shelfMl[place] = Math.max(0, restMl);
  }
}

const needAt = ({ paints }: StagedWork, place: number, stage: number, draw: number): number =>
  numberAt(at(at(paints, place).needMl, stage), draw);

/** Whether a pot that can be had runs dry. */
function isDryAt(stage: number, going: Going, { work, goods }: Paper): boolean {
  for (let place = 0; place < work.paints.length; place++) {
    if (needAt(work, place, stage, going.draw) <= (going.shelfMl[place] as number) + sameMl) continue;
    if (at(goods.holders, place).some((offer) => at(going.left, offer) > 0)) return true;
  }
  return false;
}

/** What is ordered once something is dry. */
function wantedAt(stage: number, going: Going, { work, goods }: Paper, wants: Wants): Wanted[] {
  const wanted: Wanted[] = [];
  for (let place = 0; place < work.paints.length; place++) {
    if (at(goods.holders, place).length === 0) continue;
    const shelf = going.shelfMl[place] as number;
    const need = needAt(work, place, stage, going.draw);
    const [want, after] = [stage, stage + 1].map((one) => numberAt(at(wants, place), one)) as [
      number,
      number,
    ];
    // Of a dry one a share of the stage is done; and whatever he planned, he sees that some is missing.
    const isDry = need > shelf + sameMl;
    const ml = isDry ? Math.max(want - (shelf / need) * (want - after), 2 * sameMl) : want - shelf;
    if (ml > sameMl) wanted.push({ place, ml });
  }
  return wanted;
}

function receive({ counts, cashMinor, pieces }: Refill, stage: number, going: Going, paper: Paper): void {
  going.cashMinor += cashMinor;
  going.orders++;
  going.next ??= { stage, cashMinor };
  for (const [offer, count] of counts) going.left[offer] = at(going.left, offer) - count;
  for (const piece of pieces) put(piece, going, paper);
}

function endOf({ cashMinor, orders, isLacking, next, ...going }: Going): Painted {
  let leftOverMinor = going.spareMinor;
  for (const [place, bought] of going.boughtMl.entries()) {
    const share = Math.min(1, (going.shelfMl[place] as number) / bought);
    if (bought > 0) leftOverMinor += (going.paidMinor[place] as number) * share;
  }
  return { cashMinor, orders, isLacking, next, leftOverMinor };
}
