/** Whether a process of this number is alive, ours or not. */
export const isRunning = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch (fault) {
    return fault instanceof Error && 'code' in fault && fault.code === 'EPERM';
  }
};
