/** Where lesson and bench stand: side by side where there is room, the lesson as a sheet from below on a phone. */
import { css } from 'lit'

export const lessonsViewStyles = css`
  :host {
    position: relative;
    padding: 8px;
  }
  /* The places of lesson and bench are those of the view itself. */
  main {
    display: contents;
  }
  .drop,
  .refused {
    display: grid;
    gap: 8px;
    margin-bottom: 8px;
    padding: 12px 16px;
    border: 2px solid var(--accent);
    border-radius: var(--corner);
    background: var(--accent-ground);
  }
  .problems {
    display: grid;
    gap: 4px;
    padding-inline-start: 20px;
    font-size: 0.9375rem;
    list-style: disc;
    overflow-wrap: anywhere;
  }
  .lesson {
    display: grid;
    gap: 8px;
    align-content: start;
    padding: 10px 16px 0;
    border: var(--hairline) solid var(--panel-edge);
    border-radius: var(--corner);
    background: var(--panel);
    /* What has the focus is not covered by the foot of the step. */
    scroll-padding-bottom: 6.5rem;
  }
  .top {
    justify-content: space-between;
  }
  @media (width < 56.25em) {
    :host([data-screen='lesson']) {
      display: grid;
      grid-template-rows: auto minmax(0, 1fr) auto;
      gap: 0 8px;
      height: 100%;
    }
    .bench {
      grid-row: 2;
      overflow-y: auto;
      min-height: 0;
    }
    .lesson {
      grid-row: 3;
      overflow-y: auto;
      max-height: 40dvh;
      border-top: 3px solid var(--accent);
    }
    :host([data-large]) .lesson {
      max-height: 62dvh;
    }
  }
  /* Lesson and bench stand side by side. */
  @media (min-width: 56.25em), (40em <= width < 56.25em) and (height < 31.25em) {
    .refused,
    .drop {
      grid-column: 1 / -1;
    }
    .size {
      display: none;
    }
    .lesson,
    .bench {
      grid-row: 2;
    }
  }
  /* A phone on its side has no height to share. */
  @media (40em <= width < 56.25em) and (height < 31.25em) {
    :host([data-screen='lesson']) {
      grid-template: auto minmax(0, 1fr) / minmax(0, 5fr) minmax(0, 6fr);
    }
    .lesson,
    :host([data-large]) .lesson {
      max-height: none;
      border-top: var(--hairline) solid var(--panel-edge);
    }
  }
  @media (min-width: 56.25em) {
    :host([data-screen='lesson']) {
      display: grid;
      grid-template: auto minmax(0, 1fr) / minmax(21.25rem, 29%) minmax(0, 1fr);
      gap: 0 8px;
      align-items: start;
    }
    .lesson {
      position: sticky;
      top: 8px;
      overflow-y: auto;
      max-height: calc(100dvh - 1rem);
    }
  }
  @media (min-width: 68.75em) and (min-height: 43.75em) {
    :host([data-screen='lesson']) {
      align-items: stretch;
      height: 100%;
    }
    .lesson {
      position: static;
      max-height: none;
      min-height: 0;
    }
    .bench {
      overflow-y: auto;
      min-height: 0;
    }
  }
  @media print {
    :host {
      padding: 0;
    }
  }
`
