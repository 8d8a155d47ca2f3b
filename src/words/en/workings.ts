/** The panel that shows how everything is computed, and what the model leaves out. */
export const workings = {
  'workings.of': 'Unit {unit}, {name}, in the patch looked at. Every number below is the present one.',
  'workings.pull': 'How hard each film pulls',
  'workings.pullNote':
    'T tack number (at {speed} m/s, {thickness} µm, {temperature} °C); U speed, m/s; θ temperature, °C; h thickness of the film, µm; s rise by the paper’s suction, 1 on the blanket; w loss by water; s and w are factors without unit. F in tack units. A mixed film goes by the ink it mostly is, and has the geometric mean of its inks’ tacks; a unit’s number beside the letter says whose blanket left it.',
  'workings.weakest': 'Which film breaks',
  'workings.weakestNote':
    'Strength differs from spot to spot (Weibull, modulus m = {evenness}, without unit, the evenness of the sheet); the weakest plane breaks first. p is the share of spots where the paper holds.',
  'workings.paper': 'Whether the paper holds',
  'workings.paperNote':
    'F* is the pull that reaches the paper, S its surface strength here, {strength} tack units. P is the chance that the paper (modulus {modulus}, without unit) is weaker than the pull: P = {torn}.',
  'workings.contact': 'How much of the area touches',
  'workings.contactNote':
    'k, 1/µm, belongs to the paper; x is the film on the blanket, h the wet film it meets, both µm.',
  'workings.amount': 'How much ink stays',
  'workings.amountBare':
    'On bare paper (Walker and Fetsko, 1955): b is the most the paper holds at once, f the share of the rest that stays. All in µm.',
  'workings.amountWet':
    'On wet ink the film splits evenly where it is the weakest, and leaves nothing where a film below breaks. All in µm.',
  'workings.amountIdle': 'The unit prints nothing here; its blanket only gives and takes.',
  'workings.trap': 'Mass trap',
  'workings.trapNote':
    'Film of {later} on {earlier}, divided by its film on bare paper, both on this sheet and in µm. It is not the apparent trap that a densitometer gives.',
  'workings.limits': 'What the model leaves out',
  'workings.limit.teaching':
    'It is a teaching model: do not set a press from it. Press maker, ink supplier and site rules come first.',
  'workings.limit.numbers':
    'The constants are chosen so that results lie where the trade sees them; no press was measured for them. A tack number belongs to its instrument and compares with no other instrument’s.',
  'workings.limit.setting':
    'Suction only ever raises a film’s pull. A very absorbent coating really starts at its highest pull and falls.',
  'workings.limit.field':
    'The readings average over all spots with even films; the loupe draws every spot. Over a whole press the two differ by a few points, since films grow uneven.',
  'workings.limit.rest':
    'Left out: the screen’s dots, ink spreading sideways, drying in the pile, fan-out, ghosting, and everything that moves in the ink train besides the film. Contamination is the model’s own index.',
} as const
