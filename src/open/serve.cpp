// SPDX-License-Identifier: MIT
#include "open/serve.hpp"

#include <sys/socket.h>

#include <string>

namespace vowelway::open {

namespace {

constexpr char const* here = "127.0.0.1";
// What the page itself asks the browser to hold to, and that no other page may frame it.
constexpr char const* policy =
    "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; worker-src 'self'; connect-src 'self'; "
    "style-src 'self'; img-src 'self' data: blob:; media-src blob:; manifest-src 'self'; base-uri 'none'; "
    "form-action 'none'; frame-ancestors 'none'";

using Handled = httplib::Server::HandlerResponse;

Handled refuse(httplib::Response& response, int status, char const* why) {
    response.status = status;
    response.set_content(std::string(why) + "\n", "text/plain");
    return Handled::Handled;
}

Handled checked(httplib::Request const& request, httplib::Response& response, std::string const& port) {
    auto const host = request.get_header_value("Host");
    if (request.get_header_value_count("Host") != 1 ||
        (host != here + (":" + port) && host != "localhost:" + port))
        return refuse(response, 421, "this server answers this machine alone");
    if (request.method != "GET" && request.method != "HEAD")
        return refuse(response, 405, "there is nothing to send here");
    return Handled::Unhandled;
}

} // namespace

int prepare(httplib::Server& server, std::filesystem::path const& folder, int port) {
    // No second program may listen at the same port.
    server.set_socket_options([](socket_t socket) {
        int const yes = 1;
        setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
    });
    server.set_default_headers({{"Content-Security-Policy", policy},
                                {"X-Content-Type-Options", "nosniff"},
                                {"Referrer-Policy", "no-referrer"},
                                {"Cross-Origin-Opener-Policy", "same-origin"},
                                {"Cross-Origin-Resource-Policy", "same-origin"},
                                {"Permissions-Policy", "microphone=(self), camera=(), geolocation=()"},
                                {"Cache-Control", "no-cache"}});
    server.set_payload_max_length(0);
    server.set_keep_alive_max_count(100);
    for (auto const& [ending, type] : {std::pair{"js", "text/javascript"},
                                       {"mjs", "text/javascript"},
                                       {"wasm", "application/wasm"},
                                       {"webmanifest", "application/manifest+json"},
                                       {"woff2", "font/woff2"}})
        server.set_file_extension_and_mimetype_mapping(ending, type);
    if (!server.set_mount_point("/", folder.string())) return 0;
    int const taken = port == 0 ? server.bind_to_any_port(here) : server.bind_to_port(here, port) ? port : -1;
    if (taken <= 0) return 0;
    server.set_pre_routing_handler([port = std::to_string(taken)](auto const& request, auto& response) {
        return checked(request, response, port);
    });
    return taken;
}

} // namespace vowelway::open
