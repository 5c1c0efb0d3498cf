package strict

import (
	"slices"
	"strings"

	"ellwand/pieces/language"
)

// Nearest returns the known name that a mistyped one most likely means: one
// with the same words in another order, else one that differs by few letters,
// else one that begins with what was typed; nothing when none is near.
func Nearest(typed string, known []string) string {
	best, least := "", len(typed)/3+2
	for _, name := range known {
		if d := distance(Plain(typed), Plain(name)); d < least {
			best, least = name, d
		}
		if sorted(typed) == sorted(name) {
			return name
		}
	}
	if best != "" || typed == "" {
		return best
	}
	for _, name := range known {
		if strings.HasPrefix(Plain(name), Plain(typed)) {
			return name
		}
	}
	return ""
}

// sorted gives the words of a name in the order of the alphabet.
func sorted(name string) string {
	words := strings.Split(Plain(name), "_")
	slices.Sort(words)
	return strings.Join(words, "_")
}

// Plain levels what people vary: capitals, and spaces, hyphens and underscores.
func Plain(name string) string {
	return strings.NewReplacer(" ", "_", "-", "_").Replace(strings.ToLower(name))
}

// distance is the number of letters to insert, delete or change (Levenshtein,
// 1965).
func distance(a, b string) int {
	from, to := []rune(a), []rune(b)
	row := make([]int, len(to)+1)
	for j := range row {
		row[j] = j
	}
	for i, r := range from {
		diagonal := row[0]
		row[0] = i + 1
		for j, s := range to {
			change := diagonal
			if r != s {
				change++
			}
			diagonal = row[j+1]
			row[j+1] = min(change, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(to)]
}

// Hint completes a sentence about an unknown name: the nearest known one, or
// all of them when none is near.
func Hint(typed string, known []string) language.Sentence {
	if near := Nearest(typed, known); near != "" {
		return language.Say("did you mean %s?", "ist %s gemeint?", near)
	}
	return language.Say("use one of: %s", "es gibt: %s", strings.Join(known, ", "))
}

// KnownAs finds a name among the known ones, whatever its capitals, hyphens and
// underscores.
func KnownAs(name string, known []string) (string, bool) {
	for _, k := range known {
		if Plain(k) == Plain(name) {
			return k, true
		}
	}
	return "", false
}
