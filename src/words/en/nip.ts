/** What a nip did, in words for somebody who has never seen a press. Terms in [[ ]] link to the glossary. */
export const nip = {
  'nip.nothing': 'Nothing happens here: unit {unit} prints no ink in this patch, and no wet ink comes in.',
  'nip.idle':
    'Unit {unit} prints nothing here, yet its [[blanket|blanket]] touches the wet ink: it takes up {lifted, number, ::.00} µm and gives back {laid, number, ::.00} µm.',
  'nip.bare':
    'The {ink} [[ink-film|film]] met bare paper. The paper took hold of {held, number, ::.00} µm at once and the rest split: of {brought, number, ::.00} µm, {laid, number, ::.00} µm stayed.',
  'nip.dry':
    'The {ink} [[ink-film|film]] met dry ink, which cannot be pulled up: of {brought, number, ::.00} µm, {laid, number, ::.00} µm stayed, as on paper.',
  'nip.took':
    'In {count, number} of {of, number} spots the {ink} [[ink-film|film]] was the weakest, so it split there and left half of itself on the {below}.',
  'nip.failed':
    'Only in {count, number} of {of, number} spots was the {ink} [[ink-film|film]] the weakest; only there did it split and leave half of itself behind.',
  'nip.lifted':
    'In {count, number} of {of, number} a film below was weaker, most often the {weakest} ({weakestCount, number}): it split instead, the blanket [[lifting|lifted]] part of it with all above it, and no {ink} stayed there.',
  'nip.lifted-one':
    'In {count, number} of {of, number} the {weakest} below was weaker: it split instead, the blanket [[lifting|lifted]] part of it, and no {ink} stayed there.',
  'nip.torn':
    'In {count, number} of {of, number} spots the paper was the weakest: its surface was [[picking|picked]] off with all that lay on it.',
  'nip.open':
    'In {count, number} of {of, number} spots the film was too thin to reach into a hollow, and touched nothing.',
} as const
