/** Bundles the search for texts that break a rule; returns where its parts are. */
export function bundleFuzz(root: string, folder?: string): Promise<{ fuzz: string; worker: string }>;
