package marks

import (
	"slices"
	"strconv"
	"strings"

	"ellwand/pieces/seams"
)

// byWords finds the marks by their words, those of one side among them.
var byWords = func() map[string]Name {
	found := make(map[string]Name, 3*pointCount)
	for p := range pointCount {
		for _, side := range []seams.Side{seams.NoSide, seams.OnFront, seams.OnBack} {
			n := Name{point: p, side: side}
			if words := n.String(); p != noPoint && found[words] == None {
				found[words] = n
			}
		}
	}
	return found
}()

// matching are the seams that match by their lower ends.
var matching = []seams.Name{
	seams.CentreFront, seams.CentreBack, seams.SideSeam, seams.OutsideLeg, seams.InsideLeg, seams.FrontSeam,
	seams.BackSeam,
}

// MatchingSeams are the seams that match by their lower ends: those that run along the
// body. The most important come first [source.CommonPractice].
func MatchingSeams() []seams.Name { return slices.Clone(matching) }

// Called reads the name back from its words, as String has them. Words that are
// those of no mark here name one of people's own.
func Called(words string) Name {
	for _, seam := range matching {
		if seamWords(seam) == words {
			return OfSeam(seam)
		}
	}
	rest, image := strings.CutSuffix(words, imageWords)
	rest, order := numbered(rest)
	n, ok := byWords[rest]
	if !ok {
		n = Name{text: rest}
	}
	n.order, n.image = order, image
	if rest == "" || n.String() != words {
		return Name{text: words}
	}
	return n
}

// numbered cuts the number off the end of words; 0 where there is none.
func numbered(words string) (rest string, order int) {
	at := strings.LastIndexByte(words, ' ')
	if at < 0 {
		return words, 0
	}
	order, err := strconv.Atoi(words[at+1:])
	if err != nil || order < 1 {
		return words, 0
	}
	return words[:at], order
}

// All reads a list of names back from their words.
func All(words []string) []Name {
	names := make([]Name, len(words))
	for i, text := range words {
		names[i] = Called(text)
	}
	return names
}
