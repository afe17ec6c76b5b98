/** Files of the page: names that no system trips over, and downloads without a network. */

/** The largest case that is read, bytes: as on the command line. */
export { MAX_CASE_BYTES as MOST_BYTES } from '../facts/case-limits.js';

/** Letters and digits of a title, and the ending. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\w]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60)
    .toLowerCase();
  return `${plain === '' ? 'center-audit' : plain}.${ending}`;
}

export function download(name: string, content: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}
