/** Panels of the drills and what stands in them. */
import { css } from 'lit'

export const drillStyles = css`
  h2 {
    font-size: 17px;
  }
  h3 {
    margin-top: 8px;
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
  .first {
    background: var(--accent);
    color: var(--on-accent);
  }
  .first:hover:not(:disabled) {
    background: var(--accent);
    text-decoration: underline;
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
  .field {
    font-size: 14px;
    line-height: 20px;
  }
  .field select {
    display: block;
    max-width: 100%;
  }
  label.pick {
    display: flex;
    gap: 4px;
    align-items: flex-start;
    padding: 2px 0;
    line-height: 24px;
  }
  label.pick input {
    flex: none;
  }
  td {
    white-space: nowrap;
  }
  a {
    color: var(--accent);
    font-weight: 600;
  }
`
