import { InputError } from '../../packages/core/src/base/faults.js';

/** What is said of what is wrong; `no fault` where nothing is. Other errors are thrown on. */
export function messageOf(check: () => unknown): string {
  try {
    check();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  return 'no fault';
}
