/** Panels of the instruments, their rows of controls and their figures. */
import { css } from 'lit'

export const rigStyles = css`
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
  .row > label,
  .field {
    font-size: 14px;
    line-height: 20px;
  }
  .field select {
    display: block;
    max-width: 100%;
  }
  tack-number-field {
    width: 128px;
  }
  .figure {
    font-size: var(--reading);
    font-weight: 600;
    line-height: 32px;
  }
  .mark {
    padding-inline-start: 8px;
    border-inline-start: 4px solid var(--graphite);
  }
  tack-choice {
    max-width: 100%;
    overflow-x: auto;
  }
  .scroll {
    overflow-x: auto;
    max-width: 100%;
  }
  figure {
    min-width: 0;
    margin: 8px 0 0;
  }
  figcaption {
    font-weight: 650;
  }
  .check {
    display: flex;
    gap: 4px;
    align-items: center;
    font-size: 15px;
  }
  details {
    margin-top: 8px;
  }
`
