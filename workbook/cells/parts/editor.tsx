import type { ComponentChildren } from 'preact';
import { type Part, type PartsCell, partFields } from '../../../engine/index';
import { PartCommands } from './commands';
import { PartQuantity } from './field';
import { PartFinish } from './finish';
import { MassFromLibrary, SectionPick, SizeOfTrade, WirePick } from './from-library';
import { PartScale } from './scale-said';
import { PartShape } from './shape-pick';
import { ShapePicture } from './shape-picture';
import { PartStation } from './station';
import { MaterialPick, StackPick } from './stuff';
import { PartTitles } from './titles';

interface EditorProps {
  readonly cell: PartsCell;
  readonly part: Part;
  /** The part has just been added: its title takes the focus. */
  readonly isNew: boolean;
  /** Another name of this part, another part, or none. */
  onOpen(name: string | undefined): void;
}

/** Everything that can be said of one part. */
export function PartEditor({ cell, part, isNew, onOpen }: EditorProps) {
  const table = cell.name;
  return (
    <section class="part-editor" id={`part-${table}.${part.name}`} aria-label={part.title}>
      <div class="part-group">
        <PartTitles cell={cell} part={part} isNew={isNew} onOpen={onOpen} />
        <PartShape cell={cell} part={part} />
        <ShapePicture table={table} part={part} />
        <PartNeeds cell={cell} part={part} onOpen={onOpen} />
      </div>
      <div class="part-group">
        <h3>Where it is</h3>
        <PartStation table={table} part={part} />
      </div>
      <div class="part-group">
        <h3>On the scale</h3>
        <PartScale table={table} part={part} />
      </div>
      <Folded title="Finish" of={['coats_area', 'coat']} part={part}>
        <PartFinish table={table} part={part} />
      </Folded>
      <Folded title="Size, for its own inertia" of={['size_x', 'size_y', 'size_z']} part={part}>
        <Quantities table={table} part={part} of={['size_x', 'size_y', 'size_z']} />
      </Folded>
      <Folded title="Tolerances" of={['mass_tolerance', 'station_tolerance']} part={part}>
        <Quantities table={table} part={part} of={['mass_tolerance', 'station_tolerance']} />
      </Folded>
      <PartCommands cell={cell} part={part} onOpen={onOpen} />
    </section>
  );
}

/** Texts that name something other than a material. */
const NAMED: Readonly<Record<string, typeof StackPick>> = { stack: StackPick, wire: WirePick };

/** The fields that a shape has before those that every part has. */
function PartNeeds({ cell, part, onOpen }: { cell: PartsCell; part: Part; onOpen(name: string): void }) {
  const table = cell.name;
  const fields = partFields(part.shape);
  return (
    <>
      {part.shape === 'point' && <MassFromLibrary cell={cell} part={part} onOpen={onOpen} />}
      {(part.shape === 'ribs' || part.shape === 'core') && <SectionPick table={table} part={part} />}
      <SizeOfTrade table={table} part={part} />
      {fields
        .slice(
          0,
          fields.findIndex(({ name }) => name === 'x'),
        )
        .map((field) => {
          const Field = field.dimension ? PartQuantity : (NAMED[field.name] ?? MaterialPick);
          return <Field key={field.name} table={table} part={part} field={field} />;
        })}
    </>
  );
}

function Quantities({ table, part, of }: { table: string; part: Part; of: readonly string[] }) {
  return (
    <>
      {partFields(part.shape)
        .filter((field) => of.includes(field.name))
        .map((field) => (
          <PartQuantity key={field.name} table={table} part={part} field={field} />
        ))}
    </>
  );
}

/** Fields that most parts do without; open where something is typed. */
function Folded(props: { title: string; of: readonly string[]; part: Part; children: ComponentChildren }) {
  const { title, of, part, children } = props;
  const said = of.filter((name) => (part.fields[name] ?? '') !== '').length;
  return (
    <details class="part-group" open={said > 0}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}
