/** Where a step wants the sheet: having run through a unit, or in its nip. Units from 1; where none is named, the last one. */
export interface Stand {
  readonly sheetAfter?: number
  readonly sheetIn?: number
}
