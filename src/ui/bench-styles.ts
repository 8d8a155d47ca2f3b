/** Where everything on the bench stands: stacked on a phone, on one screen without scrolling at 1366 x 768. */
import { css } from 'lit'

export const benchStyles = css`
  :host {
    display: grid;
    gap: 8px;
    padding: 8px;
  }
  header {
    display: grid;
    gap: 8px;
  }
  .panel {
    padding: 8px 12px;
    border-radius: var(--corner);
    background: var(--panel);
  }
  main,
  .settings {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  .title {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
    justify-content: space-between;
  }
  .section,
  .loupe,
  .line {
    display: flex;
    flex-direction: column;
    gap: 4px;
  }
  tack-section-picture {
    flex: 1;
    min-height: 260px;
  }
  @media (min-width: 1100px) {
    main {
      grid-template:
        'settings section section' minmax(0, 1fr)
        'settings telling telling' auto 'transport readings readings' auto / 400px minmax(0, 3fr) minmax(0, 2fr);
    }
    .settings {
      grid-area: settings;
      align-content: start;
    }
    .section {
      grid-area: section;
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
  @media (min-width: 1100px) and (min-height: 700px) {
    :host {
      grid-template-rows: auto minmax(0, 1fr);
      height: 100dvh;
    }
    main {
      min-height: 0;
    }
    .settings {
      overflow-y: auto;
      min-height: 0;
    }
  }
`
