package app

import "fmt"

// Argument is what somebody gives beside the job.
type Argument string

// The arguments that a use case may refuse.
const (
	ArgumentSizes  Argument = "sizes"
	ArgumentSeams  Argument = "seams"
	ArgumentWidths Argument = "widths"
	ArgumentWidth  Argument = "width"
	ArgumentLength Argument = "length"
	ArgumentCloth  Argument = "cloth"
	ArgumentOffer  Argument = "offer"
)

// Refused is an argument that cannot be meant. The sentence begins after the
// argument's name, so that each place can call it as it is called there.
type Refused struct {
	// File is the job's, where it plays a part; or empty.
	File     string
	Argument Argument
	Text     string
}

func refuse(argument Argument, format string, args ...any) error {
	return &Refused{Argument: argument, Text: fmt.Sprintf(format, args...)}
}

// Error calls the argument by its plain name.
func (r *Refused) Error() string { return r.Calling(string(r.Argument)) }

// Calling gives the sentence with another name for the argument: "--sizes".
func (r *Refused) Calling(name string) string {
	if r.File != "" {
		return r.File + ": " + name + r.Text
	}
	return name + r.Text
}
