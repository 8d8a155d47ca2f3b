/** How a lesson reads: text first, one thing to press, what is new set off by a line. */
import { css } from 'lit'

export const lessonStyles = css`
  h2 {
    font-size: 20px;
    line-height: 26px;
  }
  h2:focus {
    outline: none;
  }
  h3 {
    font-size: 16px;
    line-height: 22px;
  }
  h4 {
    margin: 0;
    font-size: 16px;
  }
  .prose-text {
    display: grid;
    gap: 8px;
    font-size: 17px;
    line-height: 24px;
    overflow-wrap: anywhere;
  }
  .prose-text .prose {
    display: grid;
    gap: 4px;
    padding-inline-start: 24px;
    list-style: disc;
  }
  .prose-text ol.prose {
    list-style: decimal;
  }
  blockquote {
    margin: 0;
    padding-inline-start: 12px;
    border-inline-start: 3px solid var(--line);
  }
  table {
    border-collapse: collapse;
  }
  th,
  td {
    padding: 2px 12px 2px 0;
    border-bottom: 1px solid var(--line);
    text-align: start;
  }
  a {
    color: var(--accent);
  }
  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
  }
  .set-off {
    padding: 4px 12px;
    border-inline-start: 4px solid var(--line);
    font-size: 15px;
    line-height: 21px;
  }
  .main {
    min-height: 36px;
    padding: 0 16px;
    background: var(--accent);
    color: var(--on-accent);
  }
  .main:hover:not(:disabled) {
    background: var(--accent);
    text-decoration: underline;
  }
  .main:disabled {
    background: none;
  }
  @media (pointer: coarse) {
    .main {
      min-height: 44px;
    }
  }
`
