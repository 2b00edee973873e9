/** What the web framework is told: headers for every answer, and what stays on the server. */

/** Scripts and styles come from here alone; drawings are inline SVG, so inline styles are allowed. */
const contentSecurityPolicy = [
  "default-src 'self'",
  `script-src 'self' 'unsafe-inline'${process.env.NODE_ENV === "development" ? " 'unsafe-eval'" : ""}`,
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "object-src 'none'",
  "base-uri 'self'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join("; ");

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
  experimental: { serverActions: { bodySizeLimit: "16mb" } },
  headers: async () => [
    {
      source: "/:path*",
      headers: [
        { key: "Content-Security-Policy", value: contentSecurityPolicy },
        { key: "X-Content-Type-Options", value: "nosniff" },
        { key: "X-Frame-Options", value: "DENY" },
        { key: "Referrer-Policy", value: "same-origin" },
        { key: "Permissions-Policy", value: "camera=(self), microphone=(), geolocation=()" },
      ],
    },
  ],
};
