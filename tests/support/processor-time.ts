/** What work of this process costs in processor time, s, user and system: the same however busy the machine is. */
export async function processorSeconds<T>(
  work: () => T | Promise<T>,
): Promise<{ result: T; seconds: number }> {
  const before = process.cpuUsage();
  const result = await work();
  const { user, system } = process.cpuUsage(before);
  return { result, seconds: (user + system) / 1e6 };
}
