#!/bin/sh
# vowelway open: this machine's browser is answered, and nobody else.
#   served_here_alone.sh PROGRAM
set -eu
work=$(mktemp -d)
server=
trap '[ -z "$server" ] || kill "$server" 2>/dev/null || true; rm -rf "$work"' EXIT
mkdir -p "$work/page/folder"
echo '<p>the page</p>' >"$work/page/folder/index.html"
echo 'void 0;' >"$work/page/folder/main.js"
echo 'kept from others' >"$work/page/secret.txt"
cp "$work/page/secret.txt" "$work/page/vowelway.html"

fail() { echo "$*" >&2; exit 1; }
"$1" open --no-browser --page "$work/page" >"$work/said" 2>"$work/err" &
server=$!
for _ in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25 26 27 28 29 30; do
    grep -q '^http://127.0.0.1:[0-9]*/$' "$work/said" && break
    sleep 0.2
done
address=$(sed -n '1s,/$,,p' "$work/said")
[ -n "$address" ] || fail "no address: $(cat "$work/said" "$work/err")"
port=${address##*:}

# expect STATUS CURL_ARGUMENTS..
expect() {
    wanted=$1
    shift
    found=$(curl -s -m 5 -o "$work/body" -D "$work/head" -w '%{http_code}' "$@") || fail "no answer: $*"
    [ "$found" = "$wanted" ] || fail "$found instead of $wanted: $*"
}
header() { grep -qi "^$1" "$work/head" || fail "no header \"$1\" in: $(cat "$work/head")"; }

expect 200 "$address/"
grep -q 'the page' "$work/body" || fail "another page: $(cat "$work/body")"
header "Content-Type: text/html"
header "Content-Security-Policy: default-src 'none';.*frame-ancestors 'none'"
header "X-Content-Type-Options: nosniff"
header "Referrer-Policy: no-referrer"
header "Cross-Origin-Resource-Policy: same-origin"
expect 200 "$address/main.js"
header "Content-Type: text/javascript"
expect 200 -H "Host: localhost:$port" "$address/main.js"
expect 200 -I "$address/"

# A name that was turned to this machine, another port, no port: not this host.
for host in "evil.example" "evil.example:$port" "127.0.0.1" "127.0.0.1:1" "127.0.0.1:$port.evil.example" ""; do
    expect 421 -H "Host: $host" "$address/"
    header "Content-Security-Policy"
done
expect 404 "$address/absent.js"
for path in "/../secret.txt" "/../vowelway.html" "/%2e%2e/secret.txt" "/..%2fsecret.txt" "/x/../../secret.txt" "//../secret.txt"; do
    found=$(curl -s -m 5 --path-as-is -o "$work/body" -w '%{http_code}' "$address$path") || fail "no answer: $path"
    [ "$found" != 200 ] || fail "200 for $path"
    if grep -q 'kept from others' "$work/body"; then fail "a file outside the folder is given: $path"; fi
done
for method in POST PUT DELETE OPTIONS; do expect 405 -X "$method" "$address/"; done

# From another address of this machine nothing is heard, and a second server does not share the port.
other=$(hostname -I 2>/dev/null | awk '{print $1}')
if [ -n "$other" ] && curl -s -m 2 -o /dev/null "http://$other:$port/"; then fail "answers at $other too"; fi
code=0
"$1" open --no-browser --port "$port" --page "$work/page" >"$work/second" 2>&1 || code=$?
[ "$code" = 3 ] || fail "a second server: exit code $code: $(cat "$work/second")"

kill -INT "$server"
code=0
wait "$server" || code=$?
server=
[ "$code" = 0 ] || fail "exit code $code after Ctrl-C"
if curl -s -m 2 -o /dev/null "$address/"; then fail "still there after Ctrl-C"; fi
echo "served at $address, to this machine alone"
