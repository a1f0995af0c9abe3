import { cite, type Row } from './rows.ts';

/** Terminal numbers of DIN 72552: printed beside the post, so that a wire is found by number and never by colour. */
export const TERMINALS: readonly Row<{ terminal: string; meaning: string }>[] = cite(
  { source: 'DIN 72552', at: 'terminal table in an encyclopaedia article', read: 'seen', unit: 'name' },
  [
    { terminal: '1', meaning: 'ignition coil, low-voltage side' },
    { terminal: '4', meaning: 'ignition coil, high-voltage side' },
    { terminal: '15', meaning: 'supply that is live while the ignition is on' },
    { terminal: '17', meaning: 'glow plug switch, starting' },
    { terminal: '19', meaning: 'glow plug switch, preheating' },
    { terminal: '30', meaning: 'supply straight from battery positive, always live' },
    { terminal: '30a', meaning: 'input from battery 2 positive in 12/24 V systems' },
    { terminal: '31', meaning: 'return straight to battery negative or chassis' },
    { terminal: '45', meaning: 'starter relay' },
    { terminal: '49', meaning: 'flasher unit input' },
    { terminal: '49a', meaning: 'flasher unit output', read: 'memory' },
    { terminal: '50', meaning: 'starter control' },
    { terminal: '53', meaning: 'wiper motor, fed', read: 'memory' },
    { terminal: '54', meaning: 'stop lamps (trailer socket use)', at: 'trailer connector articles' },
    { terminal: '56', meaning: 'headlamps; 56a high beam, 56b low beam' },
    { terminal: '58', meaning: 'tail, marker and plate lamps', read: 'memory' },
    { terminal: '58L', meaning: 'tail and marker lamps, left', at: 'trailer connector articles' },
    { terminal: '58R', meaning: 'tail and marker lamps, right', at: 'trailer connector articles' },
    { terminal: 'L', meaning: 'left direction indicators', at: 'trailer connector articles' },
    { terminal: 'R', meaning: 'right direction indicators', at: 'trailer connector articles' },
  ],
);

/** Terminals of a cube relay; here 30 is whatever feeds the contact. */
export const RELAY_TERMINALS: readonly Row<{ terminal: string; meaning: string }>[] = cite(
  { source: 'DIN 72552 / ISO 7588, as a workshop article gives it', at: 'relay terminals', read: 'seen', unit: 'name' },
  [
    { terminal: '30', meaning: 'common contact, fed from the supply' },
    { terminal: '85', meaning: 'coil, usually the ground side' },
    { terminal: '86', meaning: 'coil, usually the fed side' },
    { terminal: '87', meaning: 'contact closed to 30 when the coil is on' },
    { terminal: '87a', meaning: 'contact closed to 30 when the coil is off' },
  ],
);

/** The 13-pole 12 V trailer socket. Returns 3, 11 and 13 must not be joined on the trailer. Contact 12 is disputed. */
export const TRAILER_SOCKET_13: readonly Row<{ contact: number; meaning: string; areaMm2?: number }>[] = cite(
  { source: 'ISO 11446', at: 'contact allocation', read: 'seen', unit: 'mm2' },
  [
    { contact: 1, meaning: 'left indicator', areaMm2: 1.5 },
    { contact: 2, meaning: 'rear fog lamp', areaMm2: 1.5 },
    { contact: 3, meaning: 'return for contacts 1 to 8', areaMm2: 2.5 },
    { contact: 4, meaning: 'right indicator', areaMm2: 1.5 },
    { contact: 5, meaning: 'right tail and marker lamps', areaMm2: 1.5 },
    { contact: 6, meaning: 'stop lamps', areaMm2: 1.5 },
    { contact: 7, meaning: 'left tail and marker lamps', areaMm2: 1.5 },
    { contact: 8, meaning: 'reversing lamp', areaMm2: 1.5, read: 'memory' },
    { contact: 9, meaning: 'permanent supply', areaMm2: 2.5 },
    { contact: 10, meaning: 'supply live while the ignition is on', areaMm2: 2.5, read: 'memory' },
    { contact: 11, meaning: 'return for contact 10', areaMm2: 2.5 },
    { contact: 12, meaning: 'reserved; some use it to sense that a trailer is present' },
    { contact: 13, meaning: 'return for contact 9', areaMm2: 2.5 },
  ],
);
