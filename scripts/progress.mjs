/** What `npm test` says while it runs: each folder of tests when it is through, and now and then what it is busy with. */
import { dirname, relative } from 'node:path';
import { DefaultReporter } from 'vitest/node';

const EVERY_MS = 20_000;
const seconds = (ms) => `${(ms / 1000).toFixed(0)} s`;

export default class Progress extends DefaultReporter {
  folders = new Map();
  busy = new Set();
  files = 0;
  done = 0;

  onTestRunStart(specifications) {
    super.onTestRunStart(specifications);
    this.files = specifications.length;
    for (const { moduleId } of specifications) this.folderOf(moduleId).left += 1;
    this.timer = setInterval(
      () => this.say(`${this.done} of ${this.files} files done, busy with ${[...this.busy].join(', ')}`),
      EVERY_MS,
    );
    this.timer.unref();
  }

  onTestModuleStart({ moduleId }) {
    this.busy.add(relative(process.cwd(), moduleId));
  }

  onTestModuleEnd(module) {
    super.onTestModuleEnd(module);
    this.done += 1;
    this.busy.delete(relative(process.cwd(), module.moduleId));
    const folder = this.folderOf(module.moduleId);
    folder.left -= 1;
    folder.files += 1;
    folder.ms += module.diagnostic().duration;
    for (const test of module.children.allTests()) {
      folder.tests += 1;
      if (test.result().state === 'failed') folder.failed += 1;
    }
    if (folder.left > 0) return;
    const failed = folder.failed > 0 ? `, ${folder.failed} FAILED` : '';
    this.say(
      `${folder.name}: ${folder.tests} tests in ${folder.files} files, ${seconds(folder.ms)}${failed}`,
    );
  }

  /** A file that passes is part of its folder's line. */
  printTestModule(module) {
    if (module.state() === 'failed') super.printTestModule(module);
  }

  onTestRunEnd(...args) {
    clearInterval(this.timer);
    super.onTestRunEnd(...args);
  }

  say(line) {
    this.log(`[${seconds(performance.now() - this.start)}] ${line}`);
  }

  folderOf(path) {
    const name = relative(process.cwd(), dirname(path)).split('/').slice(0, 2).join('/');
    if (!this.folders.has(name))
      this.folders.set(name, { name, left: 0, files: 0, tests: 0, failed: 0, ms: 0 });
    return this.folders.get(name);
  }
}
