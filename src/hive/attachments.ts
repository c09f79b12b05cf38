/** How a comb hangs at the walls and the floor: free, grown on to them, or cut free at this visit. */
export const attachments = ['free', 'attached', 'cut'] as const;
export type Attachment = (typeof attachments)[number];
