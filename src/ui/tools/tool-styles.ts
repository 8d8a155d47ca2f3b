/** What the panels of sharing and files have in common. */
import { css } from 'lit'

export const toolStyles = css`
  :is(section, .side, .sides) + :is(section, .side) {
    margin-top: 20px;
    padding-top: 16px;
    border-top: 1px solid var(--line);
  }
  h3 {
    font-size: 1.0625rem;
    line-height: 1.5rem;
  }
  p {
    max-width: 68ch;
    margin: 4px 0;
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
    margin: 8px 0;
  }
  .field {
    display: grid;
    gap: 4px;
    max-width: 30rem;
    margin: 8px 0;
  }
  .field input {
    width: 100%;
    padding: 0 8px;
  }
  .set-off {
    margin: 8px 0;
    padding: 8px 12px;
    border: 1px solid var(--edge);
    border-radius: var(--corner);
    background: var(--accent-ground);
  }
  ul.problems {
    padding-inline-start: 20px;
    list-style: disc;
  }
  a {
    color: var(--accent);
  }
`
