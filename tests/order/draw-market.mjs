// Seeded draws for order tests and the bench: the same seed gives the same market on every machine.

/** Mulberry32, a public-domain generator of 32 bits. */
export function drawFrom(seed) {
  let state = seed >>> 0;
  const share = () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    share,
    chance: (of) => share() < of,
    whole: (low, high) => low + Math.floor(share() * (high - low + 1)),
  };
}

const usualSizesMl = [12, 17, 18, 22, 24, 60];
const potOf = (paint, sizeMl) => ({ paint: `paint ${paint}`, sizeMl, count: 1, container: 'dropper' });

/** A market like that of a hobby: single pots at several shops, sets at 60 to 85 % of their singles' price. */
export function drawMarket(
  seed,
  { paints, offers: count, shops: shopCount, sets = 0.1, sizesMl = usualSizesMl },
) {
  const draws = drawFrom(seed);
  const { whole, share } = draws;
  const shops = Array.from({ length: shopCount }, (_, index) => drawShop(`shop ${index}`, draws));
  const basePrice = Array.from({ length: paints }, () => whole(220, 420));
  const worthOf = (paint, sizeMl) => basePrice[paint] * (sizeMl / 17) ** 0.85;
  const offerOf = (offer, priceMinor, pots) => {
    const shop = `shop ${whole(0, shopCount - 1)}`;
    return { row: 0, shop, offer, priceMinor, pots };
  };
  const single = (paint, index) => {
    const sizeMl = sizesMl[whole(0, sizesMl.length - 1)];
    const price = worthOf(paint, sizeMl) * (0.85 + share() * 0.3);
    return offerOf(`pot ${index}`, Math.max(50, Math.round(price / 5) * 5), [potOf(paint, sizeMl)]);
  };
  const set = (index) => {
    const sizeMl = sizesMl[whole(0, Math.min(4, sizesMl.length - 1))];
    const held = [...new Set(Array.from({ length: whole(3, 12) }, () => whole(0, paints - 1)))];
    const worth = held.reduce((sum, paint) => sum + worthOf(paint, sizeMl), 0);
    const priceMinor = Math.round((worth * (0.6 + share() * 0.25)) / 10) * 10;
    const pots = held.map((paint) => potOf(paint, sizeMl));
    return offerOf(`set ${index}`, priceMinor, pots);
  };
  const singles = count - Math.round(count * sets);
  const offers = Array.from({ length: count }, (_, index) =>
    index < singles ? single(index < paints ? index : whole(0, paints - 1), index) : set(index),
  );
  const needs = Array.from({ length: paints }, (_, index) => ({
    paint: `paint ${index}`,
    ml: Math.round((Math.exp(share() * 3.5) + share()) * 100) / 100,
  }));
  return { needs, offers, shops: new Map(shops.map((shop) => [shop.shop, shop])) };
}

function drawShop(shop, { whole, chance }) {
  return {
    shop,
    postageMinor: whole(250, 690),
    freeFromMinor: whole(40, 120) * 100,
    ...(chance(0.4) ? { leastOrderMinor: whole(5, 20) * 100 } : {}),
  };
}
