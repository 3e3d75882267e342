#!/usr/bin/env bash
# Tests the launcher as a user meets it. Needs a JDK and Maven; run by ./check. Prints "N passed, N failed".
set -u

root=$(readlink -f -- "${BASH_SOURCE[0]}")
root=${root%/cli/src/launcher/*}
. "$root/cli/src/launcher/toolchain.sh"
need_build_tools
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
passed=0
failed=0

# check NAME STATUS OUT ERR COMMAND…: exit status, and patterns (extended, whole text) for both streams.
check() {
  local name=$1 status=$2 out=$3 err=$4 got=0
  shift 4
  "$@" >"$work/out" 2>"$work/err" </dev/null || got=$?
  if [ "$got" -eq "$status" ] && [[ $(<"$work/out") =~ ^($out)$ ]] && [[ $(<"$work/err") =~ ^($err)$ ]]; then
    passed=$((passed + 1))
    return
  fi
  failed=$((failed + 1))
  printf 'FAILED: %s\n  expected exit %s, out /%s/, err /%s/\n  got exit %s\n  out: %s\n  err: %s\n' \
    "$name" "$status" "$out" "$err" "$got" "$(<"$work/out")" "$(<"$work/err")"
}

# script FILE: makes a command from standard input, and the folder it stands in.
script() {
  mkdir -p "${1%/*}"
  cat >"$1"
  chmod +x "$1"
}

version='drumline [0-9]+\.[0-9]+\.[0-9]+[^ ]*'
any='(.|[[:space:]])*'

script "$work/no-mvn/mvn" <<<'#!/bin/sh
echo "Maven was started" >&2
exit 1'
no_mvn=$work/no-mvn:$PATH

# --- Starts ---
check "builds and starts" 0 "$version" "$any" "$root/drumline" --version
check "second start needs no Maven" 0 "$version" "" env PATH="$no_mvn" "$root/drumline" --version
mkdir -p "$work/a folder/else"
ln -s "$root/drumline" "$work/a folder/lathe plan"
check "through a symbolic link, from another folder" 0 "$version" "" \
  env -C "$work/a folder/else" PATH="$no_mvn" "../lathe plan" --version
check "exit code 2 of the program is passed on" 2 "" "Unknown option: '--cyle'$any" \
  env PATH="$no_mvn" "$root/drumline" --cyle

best_ms=99999
for _ in 1 2 3 4 5; do
  start=$(date +%s%N)
  "$root/drumline" --version >/dev/null
  took_ms=$((($(date +%s%N) - start) / 1000000))
  [ "$took_ms" -ge "$best_ms" ] || best_ms=$took_ms
done
check "the best of five starts takes less than a second, not $best_ms ms" 0 "" "" test "$best_ms" -lt 1000

# --- The solver's libraries ---
read -r id <"$root/cli/target/app/current"
app=$root/cli/target/app/$id
native=("$app"/native/*)
cat >"$work/Probe.java" <<'JAVA'
public class Probe {
  public static void main(String[] args) {
    com.google.ortools.Loader.loadNativeLibraries();
    System.out.println(new com.google.ortools.sat.CpModel().model().getVariablesCount());
  }
}
JAVA
mkdir "$work/java-tmp"
check "the solver loads from the application folder" 0 "0" "" \
  "$java_home/bin/java" -cp "$app/lib/*" -Djava.library.path="${native[0]}" -Djava.io.tmpdir="$work/java-tmp" "$work/Probe.java"
check "and unpacks nothing" 0 "" "" find "$work/java-tmp" -name 'ortools*'

# --- Java missing, old, or installable ---
mkdir "$work/few"
for tool in bash env readlink find uname dirname sed mkdir; do ln -s "$(command -v $tool)" "$work/few/$tool"; done
hint='drumline: needs a Java development kit \(17 or newer\) and Maven \(3\.8 or newer\); .* type: sudo apt-get install'
check "no Java: says what to type" 1 "" "$hint default-jdk-headless maven" \
  env -u JAVA_HOME PATH="$work/few" "$root/drumline" --version

cp -R "$work/few" "$work/debian"
script "$work/debian/apt-get" <<<'#!/usr/bin/env bash
echo "apt-get $*"'
script "$work/debian/id" <<<'#!/usr/bin/env bash
echo 0'
check "no Java, but root and apt-get: installs, saying so" 1 "" \
  "drumline: installing with apt-get: default-jdk-headless maven.apt-get -qq update.apt-get .*install .* default-jdk-headless maven.$hint.*" \
  env -u JAVA_HOME PATH="$work/debian" "$root/drumline" --version
script "$work/debian/id" <<<'#!/usr/bin/env bash
echo 1000'
check "no Java, apt-get, but not root: says what to type" 1 "" "$hint default-jdk-headless maven" \
  env -u JAVA_HOME PATH="$work/debian" "$root/drumline" --version

mkdir -p "$work/old/bin"
printf 'JAVA_VERSION="11.0.2"\n' >"$work/old/release"
script "$work/old/bin/java" <<<'#!/bin/sh
echo "old Java was started" >&2
exit 1'
check "a JAVA_HOME that is too old is passed over" 0 "$version" "" \
  env JAVA_HOME="$work/old" PATH="$no_mvn" "$root/drumline" --version

# --- Builds, in a copy whose path has a space, with a Maven of our own ---
copy="$work/a copy"
mkdir "$copy"
tar -C "$root" --exclude=.git --exclude=target -cf - . | tar -C "$copy" -xf -
mkdir -p "$copy/cli/target/app/$id"
cp -a "$root/cli/target/app/current" "$copy/cli/target/app/"
cp -a "$app/lib" "$app/stamp" "$copy/cli/target/app/$id/"
check "a copy elsewhere starts without a build" 0 "$version" "" env PATH="$no_mvn" "$copy/drumline" --version

rm -rf "$copy/cli/target/app"
script "$work/bad-mvn/mvn" <<<'#!/bin/sh
echo "[ERROR] Step.java:[3,5] something is amiss -> [Help 1]"
echo "[ERROR] Re-run Maven"
exit 1'
check "a failed build shows the error and its log" 1 "" \
  "drumline: building[^[]*\[ERROR\] Step\.java:\[3,5\] something is amiss.drumline: the build failed; .*/build\.log" \
  env PATH="$work/bad-mvn:$PATH" "$copy/drumline" --version
check "a failed build leaves nothing behind" 0 "" "" find "$copy/cli/target/app" -mindepth 1

script "$work/good-mvn/mvn" <<MVN
#!/usr/bin/env bash
echo call >>"$work/calls"
sleep 1
for arg in "\$@"; do case \$arg in -Ddrumline.app=*) app=\${arg#*=} ;; esac; done
cp -a "$app/lib" "\$app/"
cp "\$app/lib/drumline.jar" cli/target/
MVN
good=$work/good-mvn:$PATH
PATH=$good "$copy/drumline" --version >"$work/first" 2>"$work/first.err" &
other=$!
check "two first starts at once: this one runs" 0 "$version" "$any" env PATH="$good" "$copy/drumline" --version
wait "$other"
check "and the other one" 0 "$version" "" cat "$work/first"
check "with a single build" 0 "1" "" grep -c call "$work/calls"
touch "$copy/cli/src/main/java/drumline/cli/Main.java"
check "a newer source means a build" 0 "$version" "drumline: building$any" env PATH="$good" "$copy/drumline" --version
check "one more" 0 "2" "" grep -c call "$work/calls"

printf '%d passed, %d failed\n' "$passed" "$failed"
[ "$failed" -eq 0 ]
