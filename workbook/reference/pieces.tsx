import { Fragment } from 'preact';
import type { EntryPiece, EquationPiece, Piece, TablePiece } from '../../engine/index';
import { stretchesOf } from './written';

/** One piece of a chapter. `at`: id of the place that was gone to. */
export function PieceView({ piece, at }: { piece: Piece; at: string | undefined }) {
  switch (piece.kind) {
    case 'text':
      return <p class="reference-text">{piece.text}</p>;
    case 'list':
      return (
        <ul class="reference-list">
          {piece.items.map((item) => (
            <li key={item}>{item}</li>
          ))}
        </ul>
      );
    case 'heading':
      return (
        <h3 id={piece.id} tabIndex={-1}>
          {piece.text}
        </h3>
      );
    case 'equation':
      return <EquationView piece={piece} />;
    case 'entry':
      return <EntryView piece={piece} here={piece.id === at} />;
    case 'table':
      return <TableView piece={piece} />;
  }
}

/** Plain mathematics with its indices lowered and its powers raised. */
function Written({ text }: { text: string }) {
  return (
    <>
      {stretchesOf(text).map(({ level, text: piece }, k) => {
        const key = `${k} ${piece}`;
        if (level === 'index') return <sub key={key}>{piece}</sub>;
        return level === 'power' ? <sup key={key}>{piece}</sup> : <Fragment key={key}>{piece}</Fragment>;
      })}
    </>
  );
}

function EquationView({ piece: { title, lines, doc, source } }: { piece: EquationPiece }) {
  return (
    <div class="equation">
      <h4>{title}</h4>
      {lines.map((line) => (
        <p class="equation-line" key={line}>
          <Written text={line} />
        </p>
      ))}
      {doc !== '' && (
        <p class="aside">
          <Written text={doc} />
        </p>
      )}
      <p class="aside">{source}</p>
    </div>
  );
}

function EntryView({ piece, here }: { piece: EntryPiece; here: boolean }) {
  const { id, symbol, title, name, doc, facts, notes } = piece;
  return (
    <div class={here ? 'entry here' : 'entry'} id={id} tabIndex={-1}>
      <span class="symbol">
        <Written text={symbol} />
      </span>
      <h4>{title}</h4>
      <code>{name}</code>
      <div class="entry-words">
        {doc !== '' && <p>{doc}</p>}
        <p class="aside">{facts.join(' · ')}</p>
        {notes.map((note) => (
          <p class="aside" key={note}>
            {note}
          </p>
        ))}
      </div>
    </div>
  );
}

/** On a narrow window each row becomes a card that says the name of every column. */
function TableView({ piece: { title, columns, rows } }: { piece: TablePiece }) {
  return (
    <table class="reference-table">
      <caption>{title}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((cells, row) => (
          <tr key={row}>
            {cells.map((cell, k) => (
              <td key={columns[k]} data-column={columns[k]} class={cell === '' ? 'blank' : undefined}>
                {columns[k] === 'symbol' ? <Written text={cell} /> : cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
