/** Where everything on the bench stands: stacked on a phone, on one screen without scrolling at 1366 x 768. */
import { css } from 'lit'

export const benchStyles = css`
  :host {
    display: grid;
    gap: 8px;
    padding: 8px;
  }
  .head {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: center;
  }
  tack-scenario-bar {
    flex: 1 1 20rem;
  }
  @media (min-width: 68.75em) {
    .head {
      gap: 4px 16px;
    }
    tack-reading-switch {
      margin-inline-start: auto;
    }
  }
  .panel {
    position: relative;
    padding: calc(8px - var(--hairline)) calc(12px - var(--hairline));
  }
  main,
  .settings,
  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  tack-line-picture {
    height: 13.75rem;
  }
  tack-section-panel {
    height: 21.25rem;
  }
  tack-loupe-panel {
    height: 26.25rem;
  }
  @media (width < 45em) {
    [data-picture='section'] :is(tack-line-picture, tack-loupe-panel),
    [data-picture='loupe'] :is(tack-line-picture, tack-section-panel),
    [data-picture='line'] :is(tack-section-panel, tack-loupe-panel) {
      display: none;
    }
  }
  @media (min-width: 45em) {
    .pictures {
      grid-template: 'line line' 8.75rem 'section loupe' minmax(18.75rem, auto) / minmax(0, 5fr) minmax(15rem, 2fr);
    }
    .pictures > tack-choice {
      display: none;
    }
    tack-line-picture {
      grid-area: line;
    }
    tack-line-picture,
    tack-section-panel,
    tack-loupe-panel {
      height: auto;
    }
  }
  @media (min-width: 56.25em) {
    main {
      grid-template:
        'settings pictures' auto
        'settings transport' auto 'settings telling' minmax(0, 1fr) 'readings readings' auto / 23.25rem minmax(0, 1fr);
    }
    .pictures {
      grid-template-rows: 7rem minmax(17.5rem, auto);
    }
    .settings {
      grid-area: settings;
      align-content: start;
    }
    .pictures {
      grid-area: pictures;
    }
    .telling {
      grid-area: telling;
    }
    .transport {
      grid-area: transport;
    }
    .readings {
      grid-area: readings;
    }
  }
  /* The section needs its 300 x 220 px beside the ladder, too. */
  @media (56.25em <= width < 68.75em) {
    .pictures {
      grid-template-rows: 7rem minmax(20.5rem, auto);
      grid-template-columns: minmax(20.5rem, 1fr) minmax(10rem, 15rem);
    }
  }
  @media (min-width: 68.75em) {
    main {
      grid-template:
        'settings pictures' minmax(0, 1fr)
        'settings telling' auto 'transport readings' auto / 25rem minmax(0, 1fr);
    }
  }
  @media (min-width: 68.75em) and (min-height: 43.75em) {
    /* Where a notice, long words or a low window leave the pictures too little room, the page scrolls and cuts nothing. */
    :host {
      grid-template-rows: auto minmax(min-content, 1fr);
      min-height: 100%;
    }
    main {
      grid-template-rows: minmax(min-content, 1fr) clamp(10rem, 20dvh, 15rem) auto;
    }
    .pictures {
      grid-template-rows: clamp(6.5rem, calc(26dvh - 5.375rem), 17.5rem) minmax(min-content, 1fr);
    }
    .settings {
      /* As high as what stands beside it, never higher. */
      height: 0;
      min-height: 100%;
      overflow-y: auto;
      /* A wide bar would take from the ladder what the ink names need. */
      scrollbar-width: thin;
    }
  }
  @media (min-width: 106.25em) {
    main {
      grid-template-columns: 27.5rem minmax(0, 1fr);
    }
  }
`
