import { refusalOf } from '@quartermark/api/server';

/** Null where it is not for whoever asks: what a page of everybody leaves out. Any other error goes on. */
export async function ifAllowed<T>(asking: Promise<T>): Promise<T | null> {
  try {
    return await asking;
  } catch (error) {
    if (refusalOf(error)?.code === 'notAllowed') return null;
    throw error;
  }
}
