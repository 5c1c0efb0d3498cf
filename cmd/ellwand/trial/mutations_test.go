package trial

import (
	"bytes"
	"math/rand/v2"
	"strings"
)

// mutated changes a text in some places.
func mutated(rng *rand.Rand, text []byte, changes int) []byte {
	for range changes {
		text = mutations[rng.IntN(len(mutations))](rng, text)
	}
	return text
}

// mutateWords changes words of a command line that name no file: none of them can
// become one.
func mutateWords(rng *rand.Rand, words []string, changes int) {
	for range changes {
		at := rng.IntN(len(words))
		if strings.Contains(words[at], "OUT") || words[0] == "new" {
			continue
		}
		words[at] = hostile[rng.IntN(len(hostile))]
	}
}

// hostile are values that are seldom meant.
var hostile = []string{
	"0", "-1", "1e308", "NaN", "99999999999999999999", "10000", "0.0001", "\"\\e[2J\"", "../../x", "\u202e", "", "{}",
	"[]",
	"*a", "~", "1 000", "16 3/8 in", "300 m", "\x1b[2J", "=1+1",
}

var mutations = []func(*rand.Rand, []byte) []byte{
	scaledNumber, scaledNumber, scaledNumber, // so that many jobs stay good
	func(rng *rand.Rand, text []byte) []byte { // a value of another kind
		lines := strings.Split(string(text), "\n")
		at := rng.IntN(len(lines))
		if key, _, found := strings.Cut(lines[at], ": "); found {
			lines[at] = key + ": " + hostile[rng.IntN(len(hostile))]
		}
		return []byte(strings.Join(lines, "\n"))
	},
	func(rng *rand.Rand, text []byte) []byte { // a line less, or twice
		lines := strings.SplitAfter(string(text), "\n")
		lines[rng.IntN(len(lines))] = lines[rng.IntN(len(lines))]
		return []byte(strings.Join(lines, ""))
	},
	func(rng *rand.Rand, text []byte) []byte { // any byte
		if len(text) == 0 {
			return text
		}
		out := bytes.Clone(text)
		out[rng.IntN(len(out))] = byte(rng.IntN(256))
		return out
	},
}

// scaledNumber makes one digit another.
func scaledNumber(rng *rand.Rand, text []byte) []byte {
	out := bytes.Clone(text)
	for range 200 {
		at := rng.IntN(max(len(out), 1))
		if at < len(out) && out[at] >= '1' && out[at] <= '9' {
			out[at] = '1' + byte(rng.IntN(9))
			return out
		}
	}
	return out
}
