/**
 * Parts of the bench that a link leaves out, as where it stands inside another page. The others close up: the pictures
 * side by side where there is room, and without any settings the whole width is theirs.
 */
import { css } from 'lit'
import type { Hideable } from '../../session/view-state.ts'

/** What a person chooses to leave out: one part of the page, or all controls of one. */
export const partsToHide = {
  header: ['header'],
  scenarios: ['scenarios'],
  ladder: ['ladder'],
  paper: ['paper', 'surface strength', 'absorbency'],
  press: ['kind', 'speed', 'interval', 'temperature', 'dampening', 'waterless'],
  transport: ['transport'],
  'line picture': ['line picture'],
  section: ['section'],
  loupe: ['loupe'],
  telling: ['telling'],
  readings: ['readings'],
  workings: ['workings'],
} as const satisfies Readonly<Record<string, readonly Hideable[]>>

export type PartToHide = keyof typeof partsToHide
export const partNames = Object.keys(partsToHide) as PartToHide[]

/** Parts that leave no gap on the bench. */
const besideBench: readonly PartToHide[] = ['header', 'workings']

/** Marks the bench with the names of its parts that are hidden whole, for the styles below. */
export function markHidden(bench: HTMLElement, hide: readonly Hideable[]): void {
  const hidden = partNames.filter(
    (name) => !besideBench.includes(name) && partsToHide[name].every((part) => hide.includes(part)),
  )
  const mark = hidden.map((name) => name.replaceAll(' ', '-')).join(' ')
  if (mark === '') delete bench.dataset['hidden']
  else bench.dataset['hidden'] = mark
}

const hasNoSettings = css`[data-hidden~='ladder'][data-hidden~='paper'][data-hidden~='press']`

export const hiddenPartStyles = css`
  :host([data-hidden]) {
    height: auto;
  }
  :host([data-hidden]) main {
    grid-template-rows: auto;
    align-items: start;
  }
  :host(${hasNoSettings}) main {
    grid-template: none / repeat(auto-fit, minmax(min(100%, 26.25rem), 1fr));
  }
  :host(${hasNoSettings}) main > * {
    grid-area: auto;
  }
  :host([data-hidden]) main > .telling {
    grid-template-columns: minmax(0, 1fr);
  }
  :host([data-hidden]) main > .pictures {
    grid-template: none / repeat(auto-fit, minmax(min(100%, 21.25rem), 1fr));
  }
  :host(${hasNoSettings}) main > .pictures,
  :host([data-hidden]) .pictures > tack-line-picture {
    grid-area: auto / 1 / auto / -1;
  }
  :host([data-hidden]) .pictures > tack-line-picture {
    display: block;
    height: 10rem;
  }
  :host([data-hidden]) .pictures > :is(tack-section-panel, tack-loupe-panel) {
    display: flex;
    grid-area: auto;
    height: 22.5rem;
  }
  :host([data-hidden]) .pictures > tack-choice.panel,
  :host([data-hidden~='scenarios']) tack-scenario-bar,
  :host([data-hidden~='ladder']) .settings > tack-ink-ladder,
  :host([data-hidden~='paper']) .settings > tack-paper-panel,
  :host([data-hidden~='press']) .settings > tack-press-panel,
  :host(${hasNoSettings}) main > .settings,
  :host([data-hidden~='transport']) main > .transport,
  :host([data-hidden~='line-picture']) .pictures > tack-line-picture.panel,
  :host([data-hidden~='section']) .pictures > tack-section-panel.panel,
  :host([data-hidden~='loupe']) .pictures > tack-loupe-panel.panel,
  :host([data-hidden~='line-picture'][data-hidden~='section'][data-hidden~='loupe']) main > .pictures,
  :host([data-hidden~='telling']) main > .telling,
  :host([data-hidden~='readings']) main > .readings {
    display: none;
  }
`
