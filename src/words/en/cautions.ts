/**
 * Cautions for any step that touches a real press. Guards and lock-out: OSHA 29 CFR 1910.147 and 1910.212. Washes and
 * solvents: usual workshop rules, from memory, so the safety data sheet always comes first.
 */
export const cautions = {
  'teaching-model':
    'This is a teaching model: do not set a press from it. The press maker, the ink supplier, site rules and local codes come first, under a licensed or qualified operator.',
  'guarded-nips':
    'On a real press, in-going nips are guarded, and the press is stopped and locked out before anybody reaches in.',
  'hand-cleaning': 'Never clean by hand on running rollers.',
  solvents:
    'Washes, reducers and solvents, the liquids that clean or thin ink: read the safety data sheet, air the room, wear gloves, keep away anything that could set them alight, and put rags in a closed bin.',
} as const
