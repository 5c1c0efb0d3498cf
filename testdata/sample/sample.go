// Package sample says how much the tests try: a small sample in the ordinary
// run, and all there is where the environment variable ELLWAND_LONG is set, as
// `make check-long` does. Both prove the same of every case that they try.
package sample

import (
	"flag"
	"os"
	"strconv"

	_ "pgregory.net/rapid" // whose flags Rapid sets
)

// Long reports whether the long run was asked for.
func Long() bool { return os.Getenv("ELLWAND_LONG") != "" }

// Of is how many cases to try: the first in the ordinary run, the second in the
// long one.
func Of(ordinary, long int) int {
	if Long() {
		return long
	}
	return ordinary
}

// Spread is the whole list in the long run, and its first, middle and last in
// the ordinary one: of sizes, those where a draft goes wrong first.
func Spread[T any](list []T) []T {
	if Long() || len(list) <= 3 {
		return list
	}
	return []T{list[0], list[len(list)/2], list[len(list)-1]}
}

// Every is the whole list in the long run, and every nth of it, from the first,
// in the ordinary one.
func Every[T any](n int, list []T) []T {
	if Long() {
		return list
	}
	var out []T
	for i := 0; i < len(list); i += n {
		out = append(out, list[i])
	}
	return out
}

// Rapid makes the random tests of a package draw the same cases each time, this
// many in the ordinary run and twenty times as many in the long one. It is
// called before the flags are read: -rapid.seed and -rapid.checks come after it.
func Rapid(checks int) { RapidOf(checks, 20*checks) }

// RapidOf is Rapid with so many cases in the ordinary run, and so many in the long
// one: for a package whose cases take long.
func RapidOf(ordinary, long int) {
	for name, value := range map[string]int{"rapid.seed": 1, "rapid.checks": Of(ordinary, long)} {
		if err := flag.Set(name, strconv.Itoa(value)); err != nil {
			panic(err)
		}
	}
}

// MinimizeBriefly has a fuzz run make each input that it finds smaller in 20
// tries, unless the command line says otherwise. The usual 60 s for each are
// spent in full on inputs of some kilobytes, one after the other, and no new
// ones are tried meanwhile: in 25 s 20,000 tries came of 6,900. It is called
// before f.Fuzz.
func MinimizeBriefly() {
	const name = "test.fuzzminimizetime"
	given := false
	flag.Visit(func(f *flag.Flag) { given = given || f.Name == name })
	if given {
		return
	}
	if err := flag.Set(name, "20x"); err != nil {
		panic(err)
	}
}
