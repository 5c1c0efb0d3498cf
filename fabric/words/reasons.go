package words

import (
	"errors"
	"fmt"
	"maps"
	"strings"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	piecewords "ellwand/pieces/words"
)

// WhyNot says why a lay cannot be, and what would help: a line for each reason. Empty
// when it can.
func WhyNot(p lay.Plan) string { return Reasons(p.Cloth, p.Why) }

// Reasons on a cloth, a line each, after the pieces that stand in the way for it.
func Reasons(c cloth.Cloth, all []lay.Reason) string { return strings.Join(ReasonLines(c, all), "\n") }

// ReasonLines are those lines.
func ReasonLines(c cloth.Cloth, all []lay.Reason) []string {
	var shared Shared
	for _, r := range all {
		shared.Add(r.Piece, Reason(c, r))
	}
	return shared.Lines()
}

// Refused is an error about a cloth in words for people: its reasons and refusals as
// sentences, everything else as it is. It unwraps to the error; nil stays nil.
func Refused(c cloth.Cloth, err error) error {
	if err == nil {
		return nil
	}
	return refused{err, sentence(c, err)}
}

// refused is an error and what people read of it.
type refused struct {
	error
	text string
}

func (r refused) Error() string { return r.text }

func (r refused) Unwrap() error { return r.error }

// sentence of an error: of several that were joined, each once, after all that it is
// about.
func sentence(c cloth.Cloth, err error) string {
	if err == nil {
		return ""
	}
	var shared Shared
	addEach(&shared, c, err)
	return strings.Join(shared.Lines(), "\n")
}

func addEach(to *Shared, c cloth.Cloth, err error) {
	switch one := err.(type) {
	case lay.Reason:
		to.Add(one.Piece, Reason(c, one))
	case lay.Refusal:
		to.Add("", noLay(one))
	case cloth.Fault:
		to.Add(one.Cloth, Faulty(c, one))
	case pieces.Fault:
		to.Add(piecewords.About(one), piecewords.Faulty(one))
	case interface{ Unwrap() []error }:
		if !isJoined(err, one.Unwrap()) {
			to.Add("", err.Error())
			return
		}
		for _, each := range one.Unwrap() {
			addEach(to, c, each)
		}
	default:
		to.Add("", err.Error())
	}
}

// isJoined tells errors that were joined, a line each, from a sentence about several.
func isJoined(err error, parts []error) bool { return err.Error() == errors.Join(parts...).Error() }

// noLay says why no lay is possible. What fits no open cloth fits none that is folded:
// the reasons of the other lays would only bury it.
func noLay(r lay.Refusal) string {
	if one := r.Plans[0]; len(r.Plans) == 1 && one.Lay != lay.Open {
		return fmt.Sprintf("it cannot be laid %s: %s", one.Lay.Way(), WhyNot(one))
	}
	var lines []string
	for _, p := range r.Plans {
		line := fmt.Sprintf("%s: %s", p.Lay, WhyNot(p))
		if p.Lay == lay.Open {
			lines = []string{line}
			break
		}
		lines = append(lines, line)
	}
	return fmt.Sprintf("no lay of %s is possible:\n%s", r.Cloth, strings.Join(lines, "\n"))
}

// Reason says why something cannot be laid, and what would help, without the piece that
// stands in the way.
func Reason(c cloth.Cloth, r lay.Reason) string {
	if say, known := explained[r.Of]; known {
		return say(c, r)
	}
	return r.Error()
}

// sentenceOf a reason on a cloth.
type sentenceOf func(c cloth.Cloth, r lay.Reason) string

// explained are the sentences of each obstacle.
var explained = map[lay.Obstacle]sentenceOf{
	lay.Told: func(_ cloth.Cloth, r lay.Reason) string { return r.Text },
}

// explain obstacles by their sentences.
func explain(sentences map[lay.Obstacle]sentenceOf) bool {
	maps.Copy(explained, sentences)
	return true
}

// always the same sentence.
func always(text string) sentenceOf { return func(cloth.Cloth, lay.Reason) string { return text } }
