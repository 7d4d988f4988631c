/** What leaves the form and what comes into it: the page, the pond card, the zip of the survey, files opened. */
import { openedWords, photoUnreadWords, savedWords } from '../../text/formNotices.js';
import { textOf } from '../answers.js';
import { folderOf } from '../folder.js';
import { openedFolder } from '../opened.js';
import { isPhoto, photoData, shrunkPhoto } from './photo.js';
import type { Session } from './session.js';
import { plain, unzipped, zipOf } from './zip.js';

/** As many photos stand on the page. */
const MOST_PHOTOS = 24;

/** Hands a file to the browser. */
function save(name: string, content: BlobPart, type: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([content], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** The survey folder as one file. */
export function saveSurvey(session: Session): void {
  const { answers, attached } = session.shown;
  const zip = zipOf(folderOf(answers, attached));
  save(`${session.name}.zip`, zip as Uint8Array<ArrayBuffer>, 'application/zip');
  session.tell(savedWords(`${session.name}.zip`));
}

/** Photos as the page takes them: made anew, also those that came with a folder. */
async function photosOf(session: Session): Promise<Record<string, string>> {
  const { answers, attached } = session.shown;
  const names = [...new Set(answers.rows['pits.csv'].map((row) => textOf(row, 'photo')))];
  const photos: Record<string, string> = {};
  for (const name of names.filter(isPhoto).slice(0, MOST_PHOTOS)) {
    const bytes = attached.get(name);
    if (!bytes) continue;
    try {
      photos[name] = photoData(await shrunkPhoto(new Blob([bytes as Uint8Array<ArrayBuffer>])));
    } catch {
      session.tell(photoUnreadWords(name));
    }
  }
  return photos;
}

/** The page of the survey as it stands. */
export async function savePage(session: Session): Promise<void> {
  session.tell('The page is being made.');
  try {
    const { page } = await session.outputs(await photosOf(session));
    save(`${session.name}.html`, page, 'text/html');
    session.tell(savedWords(`${session.name}.html`));
  } catch (error) {
    session.tell(`The page could not be made: ${(error as Error).message}.`);
  }
}

/** The pond card of the survey as it stands. */
export async function saveCard(session: Session): Promise<void> {
  session.tell('The pond card is being made.');
  try {
    const { card } = await session.outputs({});
    save(`${session.name}-pond-card.html`, card, 'text/html');
    session.tell(savedWords(`${session.name}-pond-card.html`));
  } catch (error) {
    session.tell(`The pond card could not be made: ${(error as Error).message}.`);
  }
}

/** Takes up a zip, or the files of a folder, in the place of what is typed. */
export async function openFiles(session: Session, input: HTMLInputElement): Promise<void> {
  const chosen = Array.from(input.files ?? []);
  input.value = '';
  if (chosen.length === 0) return;
  try {
    const read = await Promise.all(
      chosen.map(async (file) => [file.name, new Uint8Array(await file.arrayBuffer())] as const),
    );
    const [first] = read;
    const zip = read.length === 1 && first && /\.zip$/i.test(first[0]) ? first[1] : undefined;
    const { answers, attached, asTheyCame } = openedFolder(
      zip ? unzipped(zip) : plain(Object.fromEntries(read)),
    );
    session.replace(answers, attached, openedWords(asTheyCame));
  } catch (error) {
    session.tell((error as Error).message);
  }
}
