/** Lab as published: L*, a*, b*, illuminant D50, 2 degree observer, paper included. */
type PublishedLab = readonly [number, number, number]

/**
 * The patches of a published set. Two or more letters are solids printed over one another, named without regard
 * to the order of printing: MY is red, CY green, CM blue.
 */
export type AimPatch =
  'paper' | 'C' | 'M' | 'Y' | 'K' | 'MY' | 'CY' | 'CM' | 'CMY' | 'CK' | 'MK' | 'YK' | 'MYK' | 'CYK' | 'CMK' | 'CMYK'

export interface PublishedAims {
  readonly name: string
  readonly created: string
  readonly printCondition: string
  readonly measurement: string
  readonly Lab: Readonly<Record<AimPatch, PublishedLab>>
}

/**
 * Solids and overprints of published characterisation data for offset printing. Print order K-C-M-Y unless the
 * set says otherwise. Source: the data set named in each entry.
 */
export const publishedAims: readonly PublishedAims[] = [
  {
    name: 'FOGRA27L',
    created: 'September 2003',
    printCondition:
      'Offset printing, according to ISO/DIS 12647-2:2004, OFCOM, paper type 1 or 2 = coated art, 115 g/m2, screen ruling 60 cm-1, positive-acting plates',
    measurement:
      'GretagMacbeth SpectroChart and SpectroScan, D50, 2 degree, geometry 45/0, no polarisation filter, white backing',
    Lab: {
      paper: [95.97, 0.5, -3.3],
      C: [55.16, -39.94, -50.74],
      M: [47.23, 75.94, -3.75],
      Y: [89.68, -4.45, 94.69],
      K: [16.86, 0.38, -0.37],
      MY: [47.33, 69.02, 45.12],
      CY: [48.55, -67.47, 28.04],
      CM: [24.43, 16.18, -47.1],
      CMY: [21.94, -5.85, 1.07],
      CK: [12.3, -7.63, -9.85],
      MK: [13.17, 13.33, 2.4],
      YK: [18.98, -3.18, 10.27],
      MYK: [14.72, 5.84, 4.44],
      CYK: [14.21, -11.43, 3.56],
      CMK: [10.62, 5.37, -4],
      CMYK: [11.86, -1.43, 2.15],
    },
  },
  {
    name: 'FOGRA29L',
    created: 'September 2003',
    printCondition:
      'Offset printing according to ISO/DIS 12647-2:2004, OFCOM, paper type 4 = white, uncoated, 120 g/m2, screen ruling 60 cm-1, positive-acting plates',
    measurement:
      'GretagMacbeth SpectroChart and SpectroScan, D50, 2 degree, geometry 45/0, no polarisation filter, white backing',
    Lab: {
      paper: [95.71, 0.61, -2.32],
      C: [59.04, -26.66, -42.8],
      M: [55.04, 59.46, -4],
      Y: [88.85, -1.65, 79.16],
      K: [31.88, 2.05, 2.08],
      MY: [52.48, 55.39, 30.12],
      CY: [52.24, -42.83, 18.48],
      CM: [38.54, 7.97, -32.2],
      CMY: [35.04, -3.16, -0.48],
      CK: [28.1, 0.11, -3.24],
      MK: [29.25, 6.08, 3.22],
      YK: [30.13, -1.43, 4.07],
      MYK: [28.25, 1.96, 4.02],
      CYK: [27.37, -3.27, 1.14],
      CMK: [26.37, 3.64, -0.22],
      CMYK: [26.18, 0.16, 2.17],
    },
  },
  {
    name: 'FOGRA30L',
    created: 'September 2003',
    printCondition:
      'Offset printing according to ISO/DIS 12647-2:2004, OFCOM, paper type 5 = slightly yellowish, uncoated, 120 g/m2, screen ruling 60 cm-1, positive-acting plates',
    measurement:
      'GretagMacbeth SpectroChart and SpectroScan, D50, 2 degree, geometry 45/0, no polarisation filter, white backing',
    Lab: {
      paper: [95.93, -0.77, 3.85],
      C: [58.04, -25.68, -40.19],
      M: [53.04, 59.94, 4.46],
      Y: [89.16, -1.01, 80.52],
      K: [29.44, 1.84, 2.09],
      MY: [51.03, 55.95, 30.12],
      CY: [50.64, -39.11, 16.75],
      CM: [37.53, 8.26, -22.06],
      CMY: [34.86, -0.84, 0.44],
      CK: [27.46, 2.72, -0.46],
      MK: [29.21, 4.42, 5.98],
      YK: [28.6, -0.88, 1.05],
      MYK: [28.52, 1.28, 4.23],
      CYK: [27.05, -0.72, -0.27],
      CMK: [27.54, 4.06, 4.07],
      CMYK: [26.94, 1.09, 2.88],
    },
  },
  {
    name: 'FOGRA39L',
    created: 'December 2006',
    printCondition:
      'Offset printing, according to ISO 12647-2:2004/Amd 1, OFCOM, paper type 1 or 2 = coated art, 115 g/m2, tone value increase curves A (CMY) and B (K)',
    measurement: 'D50, 2 degree, geometry 45/0, no polarisation filter, white backing, according to ISO 13655',
    Lab: {
      paper: [95, 0, -2],
      C: [55, -37, -50],
      M: [48, 74, -3],
      Y: [89, -5, 93],
      K: [16, 0, 0],
      MY: [47, 68, 48],
      CY: [50, -65, 27],
      CM: [24, 22, -46],
      CMY: [23, 0, 0],
      CK: [10.41, -8.2, -10.25],
      MK: [10.42, 13.93, 1.35],
      YK: [15.71, -3.08, 11.68],
      MYK: [11.33, 8.61, 7.28],
      CYK: [11.32, -12.88, 3.56],
      CMK: [7.88, 5.79, -5.94],
      CMYK: [8.71, -0.07, 2.06],
    },
  },
  {
    name: 'TR006',
    created: 'August 2006',
    printCondition: 'GRACoL, as in ANSI CGATS/GRACoL TR 006-2007',
    measurement: 'D50, 2 degree',
    Lab: {
      paper: [95, -0.02, -1.96],
      C: [54.96, -37.12, -50],
      M: [47.93, 74.11, -3.01],
      Y: [88.94, -5.02, 93.17],
      K: [14.95, 0.19, -0.14],
      MY: [47.37, 68.25, 48.79],
      CY: [50.12, -68.43, 25],
      CM: [24.13, 17.2, -46.14],
      CMY: [23, 0.17, -0.25],
      CK: [9.29, -7.09, -10.73],
      MK: [9.23, 14.29, 2.02],
      YK: [14.73, -3.68, 10.78],
      MYK: [10.16, 7.87, 6.8],
      CYK: [10.24, -13.05, 3.39],
      CMK: [6.78, 6.18, -4.5],
      CMYK: [8.06, 0.44, 0.02],
    },
  },
  {
    name: 'IFRA26S',
    created: 'June 2004',
    printCondition:
      'Newspaper Coldset-Offset printing according to ISO/DIS 12647-3:2004, standard newsprint, screen ruling 40 l/cm ± 2 l/cm',
    measurement: 'GretagMacbeth SpectroScan, D50, 2 degree, geometry 45/0, no polarisation filter, white backing',
    Lab: {
      paper: [85.2, 0.9, 5.18],
      C: [59.11, -23.94, -27.1],
      M: [55.5, 47.62, 0.68],
      Y: [80.37, -1.38, 61.56],
      K: [36.76, 1.48, 4.46],
      MY: [53.82, 44.81, 26.04],
      CY: [54.87, -34.25, 17.45],
      CM: [42.41, 6.99, -22.67],
      CMY: [40.39, 0.09, 0.37],
      CK: [34.17, -5.24, -4.26],
      MK: [33.95, 12.58, 3.36],
      YK: [39.84, 0.05, 14.81],
      MYK: [35.61, 13.91, 9.09],
      CYK: [36.36, -10.2, 5.94],
      CMK: [31.82, 2.98, -5.19],
      CMYK: [31.89, 0.16, 0.6],
    },
  },
]
