/** What the three numbers of a colour say: the ends of their scales. Terms in [[ ]] link to the glossary. */
export const colour = {
  'colour.scales': 'What the three [[colour-numbers|colour numbers]] say:',
  'colour.scale.black': '0 black',
  'colour.scale.white': '100 white',
  'colour.scale.green': '−50 green',
  'colour.scale.red': '+50 red',
  'colour.scale.blue': '−50 blue',
  'colour.scale.yellow': '+50 yellow',
} as const
