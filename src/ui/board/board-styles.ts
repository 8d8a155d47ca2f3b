/** Panels of the board and what they hold. */
import { css } from 'lit'

export const boardStyles = css`
  h2 {
    font-size: 1.25rem;
    line-height: 1.625rem;
  }
  h3 {
    font-size: 1.0625rem;
    line-height: 1.5rem;
  }
  p {
    max-width: 90ch;
  }
  .panel {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: center;
  }
  .beside {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 48px;
    align-items: flex-start;
  }
  .beside > * {
    display: grid;
    flex: 0 1 auto;
    grid-template-columns: minmax(0, 1fr);
    gap: 8px;
    min-width: 0;
    max-width: 100%;
  }
  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
  @media print {
    .panel {
      padding: 0;
      border: 0;
      background: none;
    }
    .scroll {
      overflow: visible;
    }
    .on-screen {
      display: none;
    }
  }
`
