import type { Chapter, EntryPiece, EquationPiece, Piece, TablePiece } from './chapter';

/** A chapter as Markdown: the text copy that shows a change of a declaration as a change of text. */
export function chapterMarkdown(chapter: Chapter): string {
  return `${[`# ${chapter.title}`, ...chapter.pieces.map(pieceMarkdown)].join('\n\n')}\n`;
}

/** File that a chapter's text copy lies in. */
export const chapterFile = (chapter: Chapter): string => `${chapter.id.replace(/^block\./, '')}.md`;

function pieceMarkdown(piece: Piece): string {
  switch (piece.kind) {
    case 'text':
      return piece.text;
    case 'list':
      return piece.items.map((item) => `- ${item}`).join('\n');
    case 'heading':
      return `## ${piece.text}`;
    case 'equation':
      return equationMarkdown(piece);
    case 'entry':
      return entryMarkdown(piece);
    case 'table':
      return tableMarkdown(piece);
  }
}

function equationMarkdown({ title, lines, doc, source }: EquationPiece): string {
  const about = [doc, source].filter(Boolean).join(' ');
  return `### ${title}\n\n${lines.map((line) => `    ${line}`).join('\n')}\n\n${about}`;
}

function entryMarkdown({ symbol, title, name, doc, facts, notes }: EntryPiece): string {
  const head = [name === '' ? '' : `\`${name}\``, symbol === '' ? '' : `*${symbol}*`, title]
    .filter(Boolean)
    .join(' · ');
  return [`- ${head}`, ...[doc, `${facts.join('; ')}.`, ...notes].filter(Boolean)].join('  \n  ');
}

function tableMarkdown({ title, columns, rows }: TablePiece): string {
  const row = (cells: readonly string[]): string =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [`## ${title}`, '', row(columns), row(columns.map(() => '---')), ...rows.map(row)].join('\n');
}
