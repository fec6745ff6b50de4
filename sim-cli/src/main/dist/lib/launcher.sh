# What the launchers of Undercap share; they read this file.

say() { printf 'undercap: %s\n' "$*" >&2; }
fail() { say "$@"; exit 1; }

# Java's own remarks would spoil results on standard output; only its errors are let through.
java_options='-Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -Djava.awt.headless=true'

# Prints the version of the Java in a folder: its first number, or 0 if there is none.
java_version() {
  [ -x "$1/bin/java" ] || { echo 0; return; }
  if [ -r "$1/release" ]; then
    version=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
  else
    version=$("$1/bin/java" -version 2>&1 | sed -n '1s/.*"\([0-9]*\).*/\1/p')
  fi
  echo "${version:-0}"
}

# Sets java_home to the Java that comes along in a folder, if it does; else to the first Java 17 or
# later in JAVA_HOME, on the search path, or where Linux distributions and macOS put it.
# find_java FOLDER PACKAGES
find_java() {
  java_home=$1/java
  if [ -x "$java_home/bin/java" ]; then return; fi
  on_path=$(command -v java || true)
  if [ -n "$on_path" ]; then
    on_path=$(readlink -f "$on_path" 2>/dev/null || echo "$on_path")
    on_path=$(dirname -- "$(dirname -- "$on_path")")
  fi
  for java_home in "${JAVA_HOME:-}" "$on_path" /usr/lib/jvm/* \
    /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    if [ -n "$java_home" ] && [ "$(java_version "$java_home")" -ge 17 ]; then return; fi
  done
  fail 'needs Java 17 or later; on Debian or Ubuntu: apt-get install '"$2"
}

# Classes as Java has read them once, so that later starts are quicker. It does no harm if this fails
# (then the file is empty), or if another Java cannot use them.
# make_archive FILE JAR SCENARIO
make_archive() {
  run=$(mktemp -d "$1.XXXXXX" 2>/dev/null) || return 0
  # The Java that comes along has none of its own classes kept yet.
  if [ -w "$java_home/lib/server" ] && ! [ -f "$java_home/lib/server/classes.jsa" ]; then
    "$java_home/bin/java" -Xshare:dump </dev/null >/dev/null 2>&1 || true
  fi
  # shellcheck disable=SC2086
  "$java_home/bin/java" $java_options -XX:ArchiveClassesAtExit="$run/undercap.jsa" -jar "$2" \
    compare "$3" --members=64 --out="$run/out" </dev/null >/dev/null 2>&1 || rm -f "$run/undercap.jsa"
  [ -s "$run/undercap.jsa" ] || : >"$run/undercap.jsa"
  mv "$run/undercap.jsa" "$1" 2>/dev/null || true
  rm -rf "$run"
}

# Becomes the program. start ARCHIVE JAR WORDS...
start() {
  archive=$1
  jar=$2
  shift 2
  # Most runs end sooner without the slow compiler, and the many copies of small methods, that pay off in
  # long ones: a comparison from some 25,000 members on.
  case "${1:-} $*" in
    batch\ * | rerun\ * | resistance\ * | plan\ * | fit\ * | sensitivity\ * | *--members[=\ ][0-9][0-9][0-9][0-9][0-9]*) ;;
    *) java_options="$java_options -XX:TieredStopAtLevel=1 -XX:+IgnoreUnrecognizedVMOptions -XX:C1MaxInlineSize=20 -XX:C1MaxInlineLevel=3" ;;
  esac

  set -- -jar "$jar" "$@"
  if [ -s "$archive" ]; then set -- -XX:SharedArchiveFile="$archive" "$@"; fi
  if [ -t 0 ]; then set -- -Dundercap.terminal.in=true "$@"; fi
  if [ -t 1 ]; then set -- -Dundercap.terminal.out=true "$@"; fi
  if [ -t 2 ]; then set -- -Dundercap.terminal.err=true "$@"; fi
  # UNDERCAP_JAVA_OPTIONS may hold several words, for example "-Xmx2g -Xint".
  # shellcheck disable=SC2086
  exec "$java_home/bin/java" $java_options ${UNDERCAP_JAVA_OPTIONS:-} "$@"
}
