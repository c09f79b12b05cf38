/** The rules of the advice by name, for the handbook: what each is for. */
export { rules } from '../advice/list.ts';
