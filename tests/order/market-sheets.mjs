// Sheets of a drawn market, for tests and benches that run whole programs. In: a market. Out: texts of CSV files by name.

const money = (minor) => (minor / 100).toFixed(2);
const csv = (header, rows) => `${[header, ...rows].join('\n')}\n`;

/** What can be bought, and where. */
export function marketSheets({ offers, shops }) {
  return {
    'offers.csv': csv(
      'shop,offer,price,paint,size ml',
      offers.flatMap(({ shop, offer, priceMinor, pots }) =>
        pots.map(({ paint, sizeMl }, at) =>
          [shop, offer, at === 0 ? money(priceMinor) : '', paint, sizeMl].join(),
        ),
      ),
    ),
    'shops.csv': csv(
      'shop,postage,free from,least order',
      [...shops.values()].map(({ shop, postageMinor, freeFromMinor, leastOrderMinor }) =>
        [
          shop,
          money(postageMinor),
          freeFromMinor === undefined ? '' : money(freeFromMinor),
          leastOrderMinor === undefined ? '' : money(leastOrderMinor),
        ].join(),
      ),
    ),
  };
}

/** An army that needs so much of each paint, about: a figure for each, as large as it takes, and empty pots. */
export function armySheets({ needs }) {
  const rows = (rowOf) => needs.map(rowOf);
  return {
    'pots.csv': csv(
      'paint,size ml,left',
      rows(({ paint }) => `${paint},17,empty`),
    ),
    'figures.csv': csv(
      'figure,eye mm,dress,area cm2',
      rows(({ paint, ml }) => `${paint},28,clothed,${(ml * 20).toFixed(1)}`),
    ),
    'schemes.csv': csv(
      'scheme,step,zone,layer,paint',
      rows(({ paint }) => `${paint},1,whole,base coat,${paint}`),
    ),
    'army.csv': csv(
      'unit,figure,scheme,count',
      rows(({ paint }) => `${paint},${paint},${paint},1`),
    ),
  };
}
