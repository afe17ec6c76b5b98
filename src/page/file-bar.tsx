/** The case to save and to open: files and drag and drop; in the browser only when asked, and deleted as easily. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Client } from './client.js';
import { download, fileName, MOST_BYTES } from './files.js';

const KEPT_UNDER = 'center-audit case';

interface Props {
  readonly client: Client;
  readonly title: string;
  readonly open: (caseText?: string, files?: Readonly<Record<string, string>>) => Promise<void>;
}

/** What a browser may refuse to a page that is opened from a folder. */
function kept(): string | undefined {
  try {
    return localStorage.getItem(KEPT_UNDER) ?? undefined;
  } catch {
    return undefined;
  }
}

export function FileBar({ client, title, open }: Props) {
  const picker = useRef<HTMLInputElement>(null);
  const [stored, setStored] = useState(kept() !== undefined);
  const [news, setNews] = useState('');

  /** A case, and beside it the measured responses that it names. */
  const openFiles = async (list: FileList | null | undefined): Promise<void> => {
    const chosen = [...(list ?? [])];
    if (chosen.some(({ size }) => size > MOST_BYTES)) {
      setNews('One of these files is larger than any case or response may be.');
      return;
    }
    const isCase = ({ name }: File): boolean => name.toLowerCase().endsWith('.json');
    const file = chosen.find(isCase);
    if (!file) {
      setNews('A case is a file that ends in .json; choose it together with the responses that it names.');
      return;
    }
    const beside = chosen.filter((each) => !isCase(each));
    const texts = await Promise.all(beside.map(async (each) => [each.name, await each.text()] as const));
    await open(await file.text(), Object.fromEntries(texts));
    setNews(`Opened ${file.name}.`);
  };
  useEffect(() => {
    const over = (event: DragEvent): void => event.preventDefault();
    const drop = (event: DragEvent): void => {
      event.preventDefault();
      openFiles(event.dataTransfer?.files);
    };
    addEventListener('dragover', over);
    addEventListener('drop', drop);
    return () => {
      removeEventListener('dragover', over);
      removeEventListener('drop', drop);
    };
  });
  const save = async (): Promise<void> => {
    download(fileName(title, 'json'), await client.ask({ do: 'write', kind: 'case' }), 'application/json');
    setNews('The case was saved as a file.');
  };
  const keepHere = async (): Promise<void> => {
    try {
      localStorage.setItem(KEPT_UNDER, await client.ask({ do: 'write', kind: 'case' }));
      setStored(true);
      setNews('Kept in this browser until you delete it.');
    } catch {
      setNews('This browser keeps nothing for a page like this; save a file instead.');
    }
  };
  const forget = (): void => {
    localStorage.removeItem(KEPT_UNDER);
    setStored(false);
    setNews('Deleted from this browser.');
  };
  return (
    <nav class="c-ways" aria-label="Cases">
      <button type="button" onClick={() => open().then(() => setNews('A new case.'))}>
        New
      </button>
      <button type="button" onClick={() => picker.current?.click()}>
        Open a case …
      </button>
      <input
        ref={picker}
        type="file"
        accept=".json,.txt,.csv,.frd"
        multiple
        hidden
        onChange={(event) => {
          openFiles(event.currentTarget.files);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" onClick={save}>
        Save as a file
      </button>
      <button type="button" onClick={keepHere}>
        Keep in this browser
      </button>
      {stored && (
        <>
          <button type="button" onClick={() => open(kept())}>
            Open what is kept
          </button>
          <button type="button" onClick={forget}>
            Delete what is kept
          </button>
        </>
      )}
      <span class="soft" role="status">
        {news}
      </span>
    </nav>
  );
}
