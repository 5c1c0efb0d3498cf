package app

import "fmt"

// Argument is what somebody gives beside the job.
type Argument string

// The arguments that a use case may refuse, or ask for.
const (
	ArgumentSizes  Argument = "sizes"
	ArgumentSeams  Argument = "seams"
	ArgumentWidths Argument = "widths"
	ArgumentWidth  Argument = "width"
	ArgumentLength Argument = "length"
	ArgumentCloth  Argument = "cloth"
	ArgumentOffer  Argument = "offer"
	ArgumentLay    Argument = "lay"
	ArgumentPiece  Argument = "piece"
	ArgumentFrom   Argument = "from"
	ArgumentFix    Argument = "fix"
	ArgumentUnits  Argument = "units"
	ArgumentName   Argument = "name"
	ArgumentSize   Argument = "size"
	ArgumentCut    Argument = "cut"
	ArgumentPair   Argument = "pair"
	ArgumentFold   Argument = "fold"
	ArgumentGrain  Argument = "grain"
	ArgumentKind   Argument = "kind"
	ArgumentRows   Argument = "rows"

	ArgumentAllowance Argument = "allowance"
	ArgumentOverlap   Argument = "overlap"
)

// Refused is something that cannot be meant, or that is not known: an argument,
// or what a job lacks and an argument could give. Each place can call the
// arguments as they are called there.
type Refused struct {
	// Place is the file, and the line where there is one: "blouse.yaml:7".
	// Empty when the job plays no part.
	Place  string
	format string
	args   []any
}

// refuse makes a sentence by the rules of fmt.Sprintf, with each Argument among
// its values called by its name.
func refuse(format string, args ...any) error { return refuseAt("", format, args...) }

func refuseAt(place, format string, args ...any) error { return &Refused{place, format, args} }

// Error calls each argument by its plain name.
func (r *Refused) Error() string { return r.Calling(func(a Argument) string { return string(a) }) }

// Calling gives the sentence with other names for the arguments: "--sizes".
func (r *Refused) Calling(name func(Argument) string) string {
	args := make([]any, len(r.args))
	for i, arg := range r.args {
		args[i] = arg
		if argument, ok := arg.(Argument); ok {
			args[i] = name(argument)
		}
	}
	text := fmt.Sprintf(r.format, args...)
	if r.Place != "" {
		return r.Place + ": " + text
	}
	return text
}
