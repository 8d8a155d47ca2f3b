/** The sheet's face in the loupe after one unit, as a picture of one pixel a cell. */
import { cutRound, inkInCells, paintMarks } from './loupe-pixels.ts'
import type { BenchPicture } from './picture.ts'

/** `unit` -1 is the bare sheet. */
export function faceImage({ cells, face, theme, paint }: BenchPicture, unit: number): ImageData {
  const { width, height } = cells
  const image = new ImageData(width, height)
  if (face === 'marks') paintMarks(cells.stages[unit], { unit, width }, theme, image.data)
  else paint(inkInCells(cells, unit), image.data)
  cutRound(image.data, width, height)
  return image
}
