/** The entry of a worker thread. */
import { auditOne, type Job, type Outcome, type Task } from './one.js';

export default function work({ task, job }: { task: Task; job: Job }): Promise<Outcome> {
  return auditOne(task, job);
}
