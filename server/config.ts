import { join, resolve } from 'node:path';

export interface Config {
  host: string;
  port: number;
  dataFolder: string;
  smtpUrl: string | null;
  mailFrom: string;
}

const LOOPBACK = /^(?:127\.\d+\.\d+\.\d+|localhost|::1)$/;

/**
 * Settings from the environment: HOST, PORT, DATA, SMTP_URL, MAIL_FROM.
 *
 * @throws Error that says what to do, where a setting cannot be used
 */
export function configFrom(env: Readonly<Record<string, string | undefined>>): Config {
  const host = env.HOST ?? '127.0.0.1';
  const port = Number(env.PORT ?? 4417);
  if (!Number.isInteger(port) || port < 0 || port > 65535)
    throw new Error(`PORT=${env.PORT} is no port number. Use one from 1024 to 65535.`);
  if (!LOOPBACK.test(host) && env.EXPOSE !== 'everyone-on-this-network-can-read-and-change-every-job')
    throw new Error(
      `HOST=${host} would let everybody who can reach this machine read and change every job: there is no sign-in yet. Leave HOST out, or, where that is what you want, set EXPOSE=everyone-on-this-network-can-read-and-change-every-job.`,
    );
  return {
    host,
    port,
    dataFolder: resolve(env.DATA ?? 'data'),
    smtpUrl: env.SMTP_URL ?? null,
    mailFrom: env.MAIL_FROM ?? 'scratchcoat@localhost',
  };
}

export const mailFolder = (config: Config) => join(config.dataFolder, 'mail');
