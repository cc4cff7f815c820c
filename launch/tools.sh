# Finds a JDK (17 or newer) and Maven (3.8 or newer); installs them where it may, or says exactly how.
# Sourced by ./plumbrow and ./check. Sets JAVA and exports JAVA_HOME.

say() { printf '%s\n' "$*" >&2; }

may_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null 2>&1; }

install_packages() {
  say "Installing: $*"
  { apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@"; } \
    >"${TMPDIR:-/tmp}/plumbrow-install.log" 2>&1 || {
    say "Could not install $*; see ${TMPDIR:-/tmp}/plumbrow-install.log"
    return 1
  }
}

# The release file of a JDK says its version without starting it.
java_major() {
  { cat "$1/release" 2>/dev/null || "$1/bin/java" -version 2>&1; } |
    sed -n 's/^JAVA_VERSION="\([0-9][0-9]*\).*/\1/p; s/.* version "\([0-9][0-9]*\).*/\1/p' | head -n 1
}

# A JDK can compile: it has javac beside java.
is_jdk() {
  [ -x "$1/bin/javac" ] && [ "$(java_major "$1")" -ge 17 ] 2>/dev/null
}

find_jdk() {
  if [ -n "${JAVA_HOME:-}" ] && is_jdk "$JAVA_HOME"; then
    return 0
  fi
  if [ "$(uname)" = Darwin ] && [ -x /usr/libexec/java_home ]; then
    JAVA_HOME=$(/usr/libexec/java_home -v 17+ 2>/dev/null) && is_jdk "$JAVA_HOME" && return 0
  fi
  if command -v javac >/dev/null 2>&1; then
    javac_file=$(command -v javac)
    while [ -L "$javac_file" ]; do
      link=$(readlink "$javac_file")
      case "$link" in /*) javac_file=$link ;; *) javac_file=$(dirname "$javac_file")/$link ;; esac
    done
    JAVA_HOME=$(cd "$(dirname "$javac_file")/.." && pwd)
    is_jdk "$JAVA_HOME" && return 0
  fi
  for candidate in /usr/lib/jvm/*; do
    if is_jdk "$candidate"; then
      JAVA_HOME=$candidate
      return 0
    fi
  done
  return 1
}

need_jdk() {
  find_jdk || { may_install && install_packages openjdk-17-jdk-headless && find_jdk; } || {
    say "Plumbrow needs a Java development kit, version 17 or newer."
    say "  Debian or Ubuntu:  sudo apt-get install openjdk-17-jdk-headless maven"
    say "  Fedora:            sudo dnf install java-17-openjdk-devel maven"
    say "  macOS:             brew install openjdk@17 maven"
    say "Then run this again. If it is installed elsewhere, set JAVA_HOME to its folder."
    exit 2
  }
  export JAVA_HOME
  JAVA=$JAVA_HOME/bin/java
}

maven_ok() {
  command -v mvn >/dev/null 2>&1 || return 1
  version=$(mvn -q --version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9]*\)\.\([0-9][0-9]*\).*/\1 \2/p; s/^\([0-9][0-9]*\)\.\([0-9][0-9]*\)\..*/\1 \2/p' | head -n 1)
  major=${version% *}
  minor=${version#* }
  [ -n "$version" ] && { [ "$major" -gt 3 ] || { [ "$major" -eq 3 ] && [ "$minor" -ge 8 ]; }; }
}

need_maven() {
  maven_ok || { may_install && install_packages maven && maven_ok; } || {
    say "Plumbrow is built by Maven, version 3.8 or newer."
    say "  Debian or Ubuntu:  sudo apt-get install maven"
    say "  Fedora:            sudo dnf install maven"
    say "  macOS:             brew install maven"
    say "Then run this again."
    exit 2
  }
}

r_ok() {
  command -v Rscript >/dev/null 2>&1 &&
    Rscript --vanilla -e 'for (p in c("MASS", "metafor", "mvtnorm")) library(p, character.only = TRUE)' >/dev/null 2>&1
}

# R and the packages that our statistics are held against; only ./check --with-r asks for them.
need_r() {
  r_ok || { may_install && install_packages r-base-core r-cran-mass r-cran-metafor r-cran-mvtnorm && r_ok; } || {
    say "The comparison with R needs R with its packages MASS, metafor and mvtnorm."
    say "  Debian or Ubuntu:  sudo apt-get install r-base-core r-cran-mass r-cran-metafor r-cran-mvtnorm"
    say "  elsewhere:         Rscript -e 'install.packages(c(\"MASS\", \"metafor\", \"mvtnorm\"))'"
    say "Then run this again; ./check without --with-r runs all other tests."
    return 1
  }
}

# The npm package isoxml, by which tests read back task data (ISO 11783-10); nothing that we run needs it. It goes into target/,
# without scripts of its own and without a lock file. Where it can't be had the tests that need it are skipped, but not in CI.
# Sets ISOXML.
need_isoxml() {
  ISOXML=$here/target/isoxml
  [ -f "$ISOXML/node_modules/isoxml/package.json" ] && command -v node >/dev/null 2>&1 && return 0
  if ! command -v node >/dev/null 2>&1 || ! command -v npm >/dev/null 2>&1; then
    may_install && install_packages nodejs npm
  fi
  if command -v npm >/dev/null 2>&1; then
    mkdir -p "$ISOXML"
    for try in 1 2 3; do
      (cd "$ISOXML" && npm install --no-save --no-package-lock --ignore-scripts --no-audit --no-fund --prefer-offline \
        isoxml@1.11.2) >"${TMPDIR:-/tmp}/plumbrow-isoxml.log" 2>&1 && return 0
      sleep "$try"
    done
  fi
  rm -rf "$ISOXML"
  say "Without node, npm and the package isoxml the tests that read machine files back are skipped"
  say "  (Debian or Ubuntu:  sudo apt-get install nodejs npm; then run this again)."
  [ "${CI:-}" != true ]
}
