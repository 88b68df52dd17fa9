import type { UseFormReturn } from 'react-hook-form';
import type { PostFields } from './post-fields.ts';

export type PostPartProps = { form: UseFormReturn<PostFields>; errors: Record<string, string> };
