/** Comma-separated values with a heading line (RFC 4180): what holds a comma, a quote or a line end stands in quotes. */
export function writeCsv(heading: readonly string[], rows: readonly (readonly string[])[]): string {
  return [heading, ...rows].map((fields) => `${fields.map(quoted).join(',')}\r\n`).join('');
}

const quoted = (field: string): string => (/[",\r\n]/.test(field) ? `"${field.replaceAll('"', '""')}"` : field);
