/** Interviews that were stopped before their end: which case, what was asked in which order. */
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import writeFileAtomic from 'write-file-atomic';
import { quietly } from '../disk/quietly.js';
import { codeOf } from '../disk/read-file.js';
import { realPlace } from '../disk/real-place.js';
import { readCase } from '../facts/case-file.js';
import { CASE_FORMAT, CASE_VERSION } from '../facts/case-limits.js';
import { isFactId } from '../facts/catalog.js';
import type { Parked, Unfinished } from '../interview/port.js';
import { isOpening, type Topic } from '../interview/state.js';
import { plainLine } from '../lib/sanitize.js';
import { progressPath, unfinishedFolder } from './state-folder.js';

const FORMAT = 'center-audit/unfinished';
/** A record holds some hundred ids; what is larger is none of ours. */
const MOST_BYTES = 64 * 1024;
/** Interviews listed, the latest ones. */
const MOST_LISTED = 50;

export function writeUnfinished(folder: string, record: Unfinished): void {
  const path = progressPath(folder, record.casePath);
  mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
  writeFileAtomic.sync(path, `${JSON.stringify({ format: FORMAT, version: 1, ...record })}\n`, {
    mode: 0o600,
  });
}

export function forgetUnfinished(folder: string, casePath: string): void {
  rmSync(progressPath(folder, casePath), { force: true });
}

export function readUnfinished(folder: string, casePath: string): Unfinished | undefined {
  const record = readRecord(progressPath(folder, casePath));
  return record && realPlace(record.casePath) === realPlace(casePath) ? record : undefined;
}

/** Unfinished interviews whose case is still there, the latest first. Records of cases that are gone go as well. */
export function listUnfinished(folder: string): Unfinished[] {
  const names = quietly(() => readdirSync(unfinishedFolder(folder))) ?? [];
  return names
    .filter((name) => name.endsWith('.json'))
    .flatMap((name) => recordOfCase(join(unfinishedFolder(folder), name)) ?? [])
    .sort((a, b) => b.updated.localeCompare(a.updated))
    .slice(0, MOST_LISTED);
}

function recordOfCase(path: string): Unfinished | undefined {
  const record = readRecord(path);
  if (record === undefined) return undefined;
  try {
    statSync(record.casePath);
    return record;
  } catch (error) {
    // A case that may not be looked at now can come back; one that was deleted cannot. On a read-only disk it is passed over.
    if (codeOf(error) === 'ENOENT') quietly(() => rmSync(path, { force: true }));
    return undefined;
  }
}

/** Anything that is not a sound record is passed over: it only costs the order of the questions. */
function readRecord(path: string): Unfinished | undefined {
  try {
    if (statSync(path).size > MOST_BYTES) return undefined;
    const raw = JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;
    const { format, casePath, about, updated, order, put, parked } = raw;
    if (format !== FORMAT || typeof casePath !== 'string' || typeof updated !== 'string') return undefined;
    return {
      casePath,
      updated,
      about: typeof about === 'string' ? plainLine(about) : '',
      order: texts(order).filter((id): id is Topic => isOpening(id as Topic) || isFactId(id)),
      put: texts(put),
      parked: answersIn(parked),
    };
  } catch {
    return undefined;
  }
}

/** Answers set aside, checked as those of a case are; numbers are in SI, as a metric case takes them. */
function answersIn(parked: unknown): Parked {
  if (parked === undefined) return {};
  const facts = { format: CASE_FORMAT, version: CASE_VERSION, units: 'metric', facts: parked };
  const answers = quietly(() => readCase(JSON.stringify(facts)).book.answers);
  return Object.fromEntries(answers ?? []);
}

const texts = (list: unknown): string[] =>
  Array.isArray(list) ? list.filter((each) => typeof each === 'string') : [];
