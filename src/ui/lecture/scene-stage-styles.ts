/** How a scene fills its room. Its text is as large as a hall needs: at 1366 x 768 28 px, and 64 px for the number. */
import { css } from 'lit'

export const sceneStageStyles = css`
  :host {
    container-type: size;
    overflow: hidden;
    background: var(--panel);
    color: var(--graphite);
  }
  .scene {
    --text: max(1.75rem, min(2.05cqw, 3.64cqh));
    display: grid;
    grid-template: auto minmax(0, 1fr) / minmax(0, 1fr);
    gap: 0 1.2em;
    box-sizing: border-box;
    height: 100%;
    padding: 0.5em 0.9em 0;
    font-size: var(--text);
    line-height: 1.2;
  }
  @media (height < 31.25em) {
    .scene {
      --text: max(1.25rem, min(2.05cqw, 3.64cqh));
    }
  }
  :host([small]) .scene {
    --text: min(2.05cqw, 3.64cqh);
  }
  .scene[data-sides='2'] {
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
  }
  .title {
    display: grid;
    grid-column: 1 / -1;
    align-content: center;
    min-height: 2.4em;
    font-size: 1.43em;
    font-weight: 650;
    line-height: 1.15;
    text-align: center;
    text-wrap: balance;
    overflow-wrap: anywhere;
  }
  .title.long {
    min-height: 3em;
    font-size: 1.15em;
  }
  [data-picture='words'] .title {
    grid-row: 1 / -1;
    font-size: 2.286em;
    line-height: 1.2;
    max-width: 24em;
    justify-self: center;
  }
  .side {
    display: grid;
    grid-template-rows: minmax(0, 1fr) auto;
    min-width: 0;
  }
  [data-sides='2'] .side {
    grid-template-rows: auto minmax(0, 1fr) auto;
  }
  .head {
    display: flex;
    gap: 0.6em;
    align-items: center;
    justify-content: center;
    min-height: 2.2em;
    padding-bottom: 0.2em;
  }
  .stair {
    width: auto;
    height: calc(1.9 * var(--text));
    font-size: 1rem;
  }
  .picture {
    position: relative;
    min-height: 0;
  }
  .picture > :not(.unseen, tack-spot-light) {
    position: absolute;
    inset: 0;
  }
  .stair-room {
    display: grid;
    align-items: stretch;
    max-width: 34em;
    margin: 0 auto;
    padding-top: 1.8em;
  }
  tack-ink-stair {
    --stair-height: 100%;
    height: 100%;
    pointer-events: none;
  }
  .number {
    display: flex;
    gap: 0.1em 0.6em;
    align-items: center;
    justify-content: center;
    min-height: 3em;
    padding: 0.2em 0;
    text-align: start;
  }
  .number b {
    flex: none;
    font-size: 2.6em;
    font-weight: 650;
    line-height: 1;
    white-space: nowrap;
  }
  .number span {
    max-width: 26em;
  }
  @container (width < 30em) {
    .number {
      flex-wrap: wrap;
    }
    .number span {
      flex: 0 1 auto;
      min-width: min(100%, 10em);
    }
  }
  [data-sides='2'] .number {
    min-height: 3.6em;
  }
  /* A phone on its side: what may be spared goes to the picture. */
  @container (height < 22em) {
    .title {
      min-height: 1.6em;
    }
    .number,
    [data-sides='2'] .number {
      min-height: 2.2em;
    }
    .number b {
      font-size: 1.8em;
    }
  }
`
