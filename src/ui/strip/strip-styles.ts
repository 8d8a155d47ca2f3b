/** Panels of the strip, their headings and large figures. */
import { css } from 'lit'

export const stripStyles = css`
  h2 {
    font-size: 17px;
  }
  h3 {
    margin-top: 12px;
  }
  p {
    max-width: 90ch;
  }
  p + p,
  .row,
  .row + p {
    margin-top: 8px;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
  }
  .figure {
    font-size: var(--reading);
    font-weight: 600;
    line-height: 32px;
  }
  .figure small {
    font-size: 16px;
    font-weight: 400;
  }
  .mark {
    padding-inline-start: 8px;
    border-inline-start: 4px solid var(--graphite);
  }
  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
  input[type='file'] {
    max-width: 100%;
    border: 0;
    background: none;
  }
  ::file-selector-button {
    min-height: 28px;
    margin-inline-end: 8px;
    padding: 0 8px;
    border: 1px solid var(--accent);
    border-radius: var(--corner);
    background: var(--field);
    color: var(--accent);
    font: inherit;
    font-weight: 600;
    cursor: pointer;
  }
  @media (pointer: coarse) {
    ::file-selector-button {
      min-height: 44px;
    }
  }
  details {
    margin-top: 8px;
  }
`
