import { flipFuses, FuseV1Options, FuseVersion } from '@electron/fuses';
import { join } from 'node:path';

const executableIn: Partial<Record<string, (name: string) => string>> = {
  darwin: (name) => join(`${name}.app`, 'Contents', 'MacOS', name),
  win32: (name) => `${name}.exe`,
};

/** Switches off, in the packaged executable itself, every way to run it as something other than this app. */
export const setFuses = async (folder: string, name: string, platform: string): Promise<void> => {
  await flipFuses(join(folder, executableIn[platform]?.(name) ?? name), {
    version: FuseVersion.V1,
    resetAdHocDarwinSignature: platform === 'darwin',
    [FuseV1Options.RunAsNode]: false,
    [FuseV1Options.EnableCookieEncryption]: true,
    [FuseV1Options.EnableNodeOptionsEnvironmentVariable]: false,
    [FuseV1Options.EnableNodeCliInspectArguments]: false,
    [FuseV1Options.EnableEmbeddedAsarIntegrityValidation]: platform !== 'linux',
    [FuseV1Options.OnlyLoadAppFromAsar]: true,
    [FuseV1Options.GrantFileProtocolExtraPrivileges]: false,
  });
};
