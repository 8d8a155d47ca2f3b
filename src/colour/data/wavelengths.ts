/** The middle of each of the 36 bands every spectrum of the program has, in nm. */
export const wavelengths: readonly number[] = [
  380, 390, 400, 410, 420, 430, 440, 450, 460, 470, 480, 490, 500, 510, 520, 530, 540, 550, 560, 570, 580, 590, 600,
  610, 620, 630, 640, 650, 660, 670, 680, 690, 700, 710, 720, 730,
]
