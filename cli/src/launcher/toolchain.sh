# shellcheck shell=bash
# Finds, or installs, what Drumline needs from the system. Sourced by drumline and check.

say() { printf 'drumline: %s\n' "$*" >&2; }

stop() {
  say "$@"
  exit 1
}

# True if folder $1 holds a Java of release 17 or newer. Reads a file instead of starting Java: that costs a start.
is_recent_java() {
  local line version=
  [ -x "$1/bin/java" ] && [ -r "$1/release" ] || return 1
  while IFS= read -r line || [ -n "$line" ]; do
    case $line in
      JAVA_VERSION=*)
        version=${line#JAVA_VERSION=}
        version=${version//\"/}
        ;;
    esac
  done <"$1/release"
  version=${version%%[!0-9]*}
  [ -n "$version" ] && [ "$version" -ge 17 ]
}

# Sets java_home: JAVA_HOME if it is recent enough, else the java on the PATH.
find_java() {
  local java
  java_home=${JAVA_HOME:-}
  [ -n "$java_home" ] && is_recent_java "$java_home" && return 0
  java=$(command -v java) || return 1
  java=$(readlink -f -- "$java")
  java_home=${java%/bin/java}
  is_recent_java "$java_home" && return 0
  # A java that is a wrapper script knows its own home.
  java_home=$("$java" -XshowSettings:properties -version 2>&1 | sed -n 's/^ *java\.home = //p')
  [ -n "$java_home" ] && is_recent_java "$java_home"
}

have_build_tools() {
  find_java && [ -x "$java_home/bin/javac" ] && command -v mvn >/dev/null
}

# Installs Debian packages $@ where that is possible without asking for a password; says so.
install_packages() {
  local as_root=()
  command -v apt-get >/dev/null || return 1
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null && sudo -n true 2>/dev/null || return 1
    as_root=(sudo -n)
  fi
  say "installing with apt-get: $*"
  "${as_root[@]}" apt-get -qq update >&2 </dev/null
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get -qq install -y --no-install-recommends "$@" >&2 </dev/null
}

# Makes sure that a JDK and Maven are there, or stops with what to type.
need_build_tools() {
  local missing=()
  have_build_tools && return 0
  find_java && [ -x "$java_home/bin/javac" ] || missing+=(default-jdk-headless)
  command -v mvn >/dev/null || missing+=(maven)
  install_packages "${missing[@]}" && hash -r && have_build_tools && return 0
  stop "needs a Java development kit (17 or newer) and Maven (3.8 or newer);" \
    "on Debian or Ubuntu type: sudo apt-get install ${missing[*]}"
}
