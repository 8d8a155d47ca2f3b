/** Orders, single changes and tack ladders: what each change costs beside what is computed. The trade's own experience. */
export const orders = {
  'change.tack.up.cost': 'A stickier ink pulls harder at the paper and at the inks printed before it.',
  'change.tack.down.cost': 'Reduced ink has less colour, spreads the dots and sets more slowly.',
  'change.film.up.cost': 'More ink sets off onto the next sheet and dries more slowly.',
  'change.film.down.cost': 'Less ink covers less and pulls harder at the paper.',
  'change.speed.up.cost': 'A faster press pulls harder at the paper and leaves the inks less time.',
  'change.speed.down.cost': 'Fewer sheets an hour.',
  'change.interval.up.cost': 'The units stand where they stand: only a unit left empty makes the way longer.',
  'change.interval.down.cost': 'The units stand where they stand; and each ink has less time before the next.',
  'change.dampening.up.cost': 'More water weakens the paper and the colour, and more of it is taken up by the inks.',
  'change.dampening.down.cost': 'With too little water the plate takes ink where it should not.',
  'change.surfaceStrength.up.cost': 'Stronger paper costs more.',
  'change.surfaceStrength.down.cost': 'Weaker paper picks sooner; it only costs less.',
  'change.swap.cost':
    'Two units are washed up, and the order is no longer the one that proofs and colour profiles were made for.',
} as const
