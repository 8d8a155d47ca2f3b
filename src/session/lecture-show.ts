/**
 * A lecture being shown, as a pure reducer: which scene, how many of its presses have been made, whether the screen is
 * blank and which unit stands in the light. A press first does what is left to do in a scene, then goes on to the next.
 */
import type { Scene, ScenePicture } from './scene.ts'
import { usualPicture } from './scene.ts'

/** What a press does within a scene. */
export type Press = 'nip' | 'number'

export interface Show {
  /** place of the scene in the list */
  readonly at: number
  /** presses of this scene that have been made */
  readonly press: number
  readonly blank: 'black' | 'white' | null
  /** unit (from 0) that everything else is dimmed for */
  readonly spot: number | null
}

export type ShowEvent =
  | { kind: 'next' }
  | { kind: 'back' }
  | { kind: 'first' }
  | { kind: 'last' }
  | { kind: 'go to'; at: number }
  /** the same colour again brings the picture back */
  | { kind: 'blank'; colour: 'black' | 'white' }
  /** the same unit again, or null, ends it */
  | { kind: 'spot'; unit: number | null }

const withNip: readonly ScenePicture[] = ['section', 'loupe', 'line']

export function pictureOf({ picture = usualPicture }: Scene): ScenePicture {
  return picture
}

/** The presses a scene takes before the next one goes on. */
export function pressesOf(scene: Scene): Press[] {
  const nip: Press[] = scene.plays === true && withNip.includes(pictureOf(scene)) ? ['nip'] : []
  const number: Press[] = scene.waits === true && scene.number ? ['number'] : []
  return [...nip, ...number]
}

/** What is to be seen of a scene after so many presses. */
export function seenAfter(scene: Scene, press: number): { nip: boolean; number: boolean } {
  const presses = pressesOf(scene)
  const made = presses.slice(0, press)
  const nip = !presses.includes('nip') || made.includes('nip')
  const number = presses.includes('number') ? made.includes('number') : nip
  return { nip, number: scene.number !== undefined && number }
}

export function startShow(at: number): Show {
  return { at, press: 0, blank: null, spot: null }
}

/** What the next press does. */
export function ahead({ at, press }: Show, scenes: readonly Scene[]): Press | 'scene' | 'end' {
  const presses = at in scenes ? pressesOf(scenes[at]) : []
  if (press < presses.length) return presses[press]
  return at < scenes.length - 1 ? 'scene' : 'end'
}

export function step(show: Show, event: ShowEvent, scenes: readonly Scene[]): Show {
  const last = scenes.length - 1
  switch (event.kind) {
    case 'next':
      // On a blank screen the first press only brings the picture back.
      if (show.blank) return { ...show, blank: null }
      if (show.press < pressesOf(scenes[show.at]).length) return { ...show, press: show.press + 1 }
      return show.at < last ? startShow(show.at + 1) : show
    case 'back':
      if (show.blank) return { ...show, blank: null }
      if (show.press > 0) return { ...show, press: show.press - 1 }
      return show.at > 0 ? { ...startShow(show.at - 1), press: pressesOf(scenes[show.at - 1]).length } : show
    case 'first':
      return startShow(0)
    case 'last':
      return startShow(last)
    case 'go to':
      return startShow(Math.min(last, Math.max(0, event.at)))
    case 'blank':
      return { ...show, blank: show.blank === event.colour ? null : event.colour }
    case 'spot': {
      const units = scenes[show.at].setUp.inks.length
      if (event.unit !== null && event.unit >= units) return show
      return { ...show, spot: show.spot === event.unit ? null : event.unit }
    }
  }
}
