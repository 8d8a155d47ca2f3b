/** A scene of a lecture: a set-up as it is shown to a class, with one picture of it and at most one number. */
import type { SetUp } from '../press/setup.ts'
import type { ViewState } from './view-state.ts'

/** What is shown of a set-up; a scene of words shows no more than its sentence. */
export const scenePictures = ['section', 'loupe', 'line', 'ladder', 'words'] as const
export type ScenePicture = (typeof scenePictures)[number]

/** Where a scene does not say, it shows what the bench shows largest. */
export const usualPicture: ScenePicture = 'section'

/** Readings of which a scene can show one. */
export const sceneReadings = ['trap', 'kept', 'film', 'lifted', 'picked', 'contamination'] as const
export type SceneReading = (typeof sceneReadings)[number]

/** One reading. Inks go by their names, so that two orders of the same inks can show the same number. */
export interface SceneNumber {
  readonly of: SceneReading
  /** whose trap, film, or store it is; lifted and picked are read where the scene looks */
  readonly ink?: string
  /** the other ink of a trap; which of the two lies below is for the order to say */
  readonly below?: string
}

export interface Scene {
  /** the sentence above the picture */
  readonly name: string
  /** for the speaker alone */
  readonly note: string
  readonly setUp: SetUp
  readonly view: ViewState
  readonly picture?: ScenePicture
  readonly number?: SceneNumber
  /** whether the nip is played by a press of its own */
  readonly plays?: boolean
  /** whether the number waits for a press of its own, so that the class can say first what it will be */
  readonly waits?: boolean
  /** what the class is asked while the number waits */
  readonly question?: string
  /** said above the picture where another stands beside it */
  readonly caption?: string
  /** a second set-up, shown the same way beside the first */
  readonly beside?: { readonly setUp: SetUp; readonly caption: string }
}

/** More than any course needs; they keep a made-up file from filling the page. */
export const mostScenes = 300

/** Characters of a sentence and of a speaker's note, which fills a page. */
export const longestSentence = 120
export const longestNote = 6000
