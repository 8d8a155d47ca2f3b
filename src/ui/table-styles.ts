/** Tables of numbers. */
import { css } from 'lit'

export const tableStyles = css`
  table {
    border-collapse: collapse;
    font-size: 0.9375rem;
    line-height: 1.25rem;
  }
  caption {
    padding: 8px 0 4px;
    font-weight: 650;
    text-align: start;
  }
  th,
  td {
    padding-block: 2px;
    padding-inline: 0 12px;
    border-bottom: 1px solid var(--line);
    text-align: end;
    vertical-align: top;
  }
  th {
    font-weight: 400;
  }
  thead th {
    color: var(--soft);
    font-size: 0.875rem;
  }
  th:first-child {
    text-align: start;
  }
`
