/** What the web framework is told: headers for every answer, and what stays on the server. */
import { mostFormBytes } from "./app/_server/launch/door.mjs";

/** @type {import('next').NextConfig} */
export default {
  poweredByHeader: false,
  typedRoutes: false,
  serverExternalPackages: [
    "pg",
    "sharp",
    "@prisma/adapter-pg",
    "@prisma/schema-engine-wasm",
    "@pdf-lib/fontkit",
  ],
  experimental: { serverActions: { bodySizeLimit: mostFormBytes } },
  headers: async () => [
    {
      source: "/:path*",
      // What scripts may run is said at the door, anew for each answer (app/_server/launch/door.mjs).
      headers: [
        { key: "X-Content-Type-Options", value: "nosniff" },
        { key: "X-Frame-Options", value: "DENY" },
        { key: "Referrer-Policy", value: "same-origin" },
        { key: "Permissions-Policy", value: "camera=(self), microphone=(), geolocation=()" },
      ],
    },
  ],
};
