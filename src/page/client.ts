/**
 * The near side of the engine. Requests are answered in order; of a kind that is asked faster than it can be
 * answered (a room that is being dragged) only the newest waits.
 */
import type { Ask, ReplyTo } from './protocol.js';
import type { Message, Result } from './worker.js';

export interface Port {
  onmessage: ((event: MessageEvent<Result>) => void) | null;
  postMessage(message: Message): void;
}

export interface Client {
  readonly ask: <A extends Ask>(ask: A) => Promise<ReplyTo<A>>;
  /** The answer to the newest request of its kind; undefined for one that a newer one has replaced. */
  readonly newest: <A extends Ask>(ask: A) => Promise<ReplyTo<A> | undefined>;
}

/** What the engine refused, in words for people. */
class Refused extends Error {}

export function connect(port: Port): Client {
  let count = 0;
  const waiting = new Map<number, { done: (value: never) => void; failed: (error: Error) => void }>();
  port.onmessage = ({ data }) => {
    const entry = waiting.get(data.id);
    waiting.delete(data.id);
    if ('refused' in data) entry?.failed(new Refused(data.refused));
    else entry?.done(data.value as never);
  };
  const ask = <A extends Ask>(wanted: A): Promise<ReplyTo<A>> =>
    new Promise((done, failed) => {
      count += 1;
      waiting.set(count, { done, failed });
      port.postMessage({ id: count, ask: wanted });
    });

  const inFlight = new Set<Ask['do']>();
  const next = new Map<Ask['do'], { ask: Ask; done: (value: never) => void; failed: (e: Error) => void }>();
  const go = (wanted: Ask, done: (value: never) => void, failed: (error: Error) => void): void => {
    inFlight.add(wanted.do);
    ask(wanted)
      .then(done as (value: unknown) => void, failed)
      .finally(() => {
        inFlight.delete(wanted.do);
        const after = next.get(wanted.do);
        next.delete(wanted.do);
        if (after) go(after.ask, after.done, after.failed);
      });
  };
  const newest = <A extends Ask>(wanted: A): Promise<ReplyTo<A> | undefined> =>
    new Promise((done, failed) => {
      if (!inFlight.has(wanted.do)) return go(wanted, done, failed);
      next.get(wanted.do)?.done(undefined as never);
      next.set(wanted.do, { ask: wanted, done, failed });
    });
  return { ask, newest };
}
