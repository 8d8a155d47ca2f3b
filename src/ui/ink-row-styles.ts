/** One row of the ink ladder: a line on a wide screen, two where fingers need room. */
import { css } from 'lit'

export const inkRowStyles = css`
  .row {
    display: grid;
    grid-template-columns: var(--ladder-columns);
    gap: 4px;
    align-items: center;
    padding: 1px 0;
  }
  .handle {
    display: flex;
    align-items: center;
    gap: 8px;
    width: 100%;
    min-width: 0;
    height: 2.625rem;
    padding-block: 0;
    padding-inline: 8px 4px;
    border-color: transparent;
    background: none;
    color: var(--graphite);
    text-align: start;
    line-height: 1.125rem;
    cursor: grab;
  }
  @media (height < 50em) {
    .handle {
      height: 2.25rem;
    }
  }
  .handle[aria-current='true'] {
    border-inline-start: 4px solid var(--graphite);
    padding-inline-start: 5px;
  }
  :host([carried]) .handle {
    outline: 3px solid var(--accent);
    background: var(--accent-ground);
    color: var(--graphite);
    cursor: grabbing;
  }
  .number {
    min-width: 0.5625rem;
  }
  .swatch {
    flex: none;
    width: 1rem;
    height: 1.75rem;
    border: 1px solid var(--graphite);
    background: var(--ink);
    touch-action: none;
    forced-color-adjust: none;
  }
  .name {
    overflow: hidden;
    overflow-wrap: anywhere;
  }
  .field {
    min-width: 0;
  }
  .head {
    display: none;
    color: var(--soft);
    font-size: 0.875rem;
    line-height: 1.125rem;
  }
  .moves {
    display: grid;
    gap: 0;
  }
  .moves button {
    min-height: 24px;
    height: 1.5rem;
    padding: 0;
    font-size: 0.75rem;
    line-height: 1;
  }
  .more {
    padding: 0;
  }
  .more[hidden] {
    display: none;
  }
  @media (pointer: coarse) {
    .moves {
      grid-auto-flow: column;
      grid-auto-columns: minmax(44px, 1fr);
    }
    .moves button {
      height: 2.75rem;
    }
  }
  @media (pointer: coarse) and (width < 68.75em), (max-width: 25em) {
    .handle {
      grid-area: 1 / 1 / 2 / 3;
    }
    .moves {
      grid-area: 1 / 3;
    }
    .more {
      grid-area: 1 / 4;
    }
    .moves {
      grid-auto-flow: column;
    }
    .moves button {
      height: 2.75rem;
    }
    .field {
      grid-row: 2;
    }
    .head {
      display: block;
    }
  }
  @media (max-width: 30em) {
    .row {
      padding: 8px 0;
    }
  }
`
