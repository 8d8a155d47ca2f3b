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
    flex: 1 1 320px;
  }
  @media (min-width: 1100px) {
    .head {
      flex-wrap: nowrap;
    }
  }
  .panel {
    position: relative;
    padding: 8px 12px;
    border-radius: var(--corner);
    background: var(--panel);
  }
  main,
  .settings,
  .pictures {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  tack-line-picture {
    height: 220px;
  }
  tack-section-panel {
    height: 340px;
  }
  tack-loupe-panel {
    height: 420px;
  }
  @media (max-width: 719px) {
    [data-picture='section'] :is(tack-line-picture, tack-loupe-panel),
    [data-picture='loupe'] :is(tack-line-picture, tack-section-panel),
    [data-picture='line'] :is(tack-section-panel, tack-loupe-panel) {
      display: none;
    }
  }
  @media (min-width: 720px) {
    .pictures {
      grid-template: 'line line' 140px 'section loupe' minmax(300px, auto) / minmax(0, 5fr) minmax(240px, 2fr);
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
  @media (min-width: 900px) {
    main {
      grid-template:
        'settings pictures' auto
        'settings transport' auto 'settings telling' minmax(0, 1fr) 'readings readings' auto / 372px minmax(0, 1fr);
    }
    .pictures {
      grid-template-rows: 112px minmax(280px, auto);
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
  @media (min-width: 1100px) {
    main {
      grid-template:
        'settings pictures' minmax(0, 1fr)
        'settings telling' auto 'transport readings' auto / 400px minmax(0, 1fr);
    }
  }
  @media (min-width: 1100px) and (min-height: 700px) {
    :host {
      grid-template-rows: auto minmax(0, 1fr);
      height: 100%;
    }
    main,
    .pictures {
      min-height: 0;
    }
    main {
      grid-template-rows: minmax(0, 1fr) clamp(160px, 20dvh, 240px) auto;
    }
    .pictures {
      grid-template-rows: clamp(104px, calc(26dvh - 86px), 280px) minmax(0, 1fr);
    }
    .settings {
      overflow-y: auto;
      /* A wide bar would take from the ladder what the ink names need. */
      scrollbar-width: thin;
      min-height: 0;
    }
    tack-section-panel,
    tack-loupe-panel {
      min-height: 0;
    }
  }
  @media (min-width: 1700px) {
    main {
      grid-template-columns: 440px minmax(0, 1fr);
    }
  }
`
