/** How a lesson reads: text first, one thing to press, what is new set off by a line. */
import { css } from 'lit'

export const lessonStyles = css`
  h2 {
    font-size: 1.25rem;
    line-height: 1.625rem;
  }
  h2:focus {
    outline: none;
  }
  h3 {
    font-size: 1rem;
    line-height: 1.375rem;
  }
  h4 {
    margin: 0;
    font-size: 1rem;
  }
  .prose-text {
    display: grid;
    gap: 8px;
    font-size: 1.0625rem;
    line-height: 1.5rem;
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
    padding-block: 2px;
    padding-inline: 0 12px;
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
    font-size: 0.9375rem;
    line-height: 1.3125rem;
  }
  .main {
    min-height: 2.25rem;
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
