/** Fields of several lines. */
import { css } from 'lit'

export const trialStyles = css`
  textarea {
    display: block;
    width: 100%;
    min-width: 0;
    min-height: 44px;
    padding: 4px;
    border: 1px solid var(--edge);
    border-radius: var(--corner);
    background: var(--field);
    color: inherit;
    font: inherit;
    font-size: 0.9375rem;
    resize: vertical;
  }
  label > input {
    width: 100%;
    padding: 0 4px;
  }
`
