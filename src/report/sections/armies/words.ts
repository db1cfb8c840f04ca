// Armies: its English. In: nothing. Out: text.
export const armyLabels = {
  heading: 'Each army’s share',
  caption: 'Of one order for all, the first army first; a short pot is short for every army that needs it',
  army: 'Army',
  figures: 'figures',
  cash: 'cash to spend',
  whole: 'cost of use',
  remaining: 'still to be used',
  short: 'short pots',
};
