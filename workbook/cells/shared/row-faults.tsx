import { FaultFlag } from '../../controls/fault-flag';
import { useSheet } from '../../store/context';

/** The flags of the texts of one row, under it. */
export function RowFaults({ paths }: { paths: readonly string[] }) {
  const sheet = useSheet();
  return (
    <>
      {paths.map((path) => {
        const fault = sheet.faultAt(path);
        return fault && <FaultFlag key={path} fault={fault} />;
      })}
    </>
  );
}
