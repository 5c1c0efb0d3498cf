package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/limit"
	"ellwand/cmd/ellwand/page"
)

// pageOptions are the options of the page command.
type pageOptions struct {
	searchFlags
	// folder of the jobs; empty is the one that was chosen before, or else the one that the
	// program is started in.
	folder    string
	port      int
	noBrowser bool
	stay      bool
}

func newPage(e *env) *cobra.Command {
	var o pageOptions
	cmd := &cobra.Command{
		Use:   "page [FOLDER]",
		Short: "Open the page in your browser: the whole job without a terminal",
		Long: `Page opens a page in your browser on which the whole job is done: measuring,
drafting, laying by the program or by hand, quoting, printing. It works on the
job files of one folder, the same that the commands read; without a name it is
the folder that you are in.

The page is made by this program on this machine alone. Nobody else can open it,
and nothing leaves the machine. It ends a while after its last tab is closed.`,
		Example: `  ellwand page
  ellwand page sewing
  ellwand page sewing --no-browser --port 8040`,
		Args: cobra.MaximumNArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 1 {
				o.folder = args[0]
			}
			return e.page(cmd.Context(), o)
		},
	}
	flags := cmd.Flags()
	flags.Var(limit.NumberOf(&o.port, limit.Port), "port", "port of this machine to open it on; 0 is any that is free")
	flags.BoolVar(&o.noBrowser, "no-browser", false, "print the address, and open no browser")
	flags.BoolVar(&o.stay, "stay", false, "go on after the last tab is closed")
	flags.Var((*passes)(&o.Passes), "passes", "passes of each search, in place of the effort")
	o.Seed = 1
	flags.Var((*limit.Seed)(&o.Seed), "seed", "seed of the searches; another seed may find another layout")
	return cmd
}

// page serves the page of a folder until it is closed. Where it is open already, that one
// is shown.
func (e *env) page(ctx context.Context, o pageOptions) error {
	sign := ""
	if cache, err := os.UserCacheDir(); err == nil {
		sign = filepath.Join(cache, "ellwand", "page.json")
	}
	if address, is := page.Running(sign, o.folder); is {
		e.showPage(address, o)
		return nil
	}
	folder := o.folder
	if folder == "" {
		folder = "."
	}
	return page.Serve(ctx, page.Options{
		Folder: folder, Port: o.port, Search: o.Search, Stay: o.stay, Sign: sign, Chosen: rememberFolder,
		Opened: func(address string) { e.showPage(address, o) },
	})
}

// showPage shows the page in the browser, or its address.
func (e *env) showPage(address string, o pageOptions) {
	if o.noBrowser {
		fmt.Fprintln(e.out, address)
		return
	}
	e.note("The page is open in your browser. If you do not see it, open this address:\n%s", address)
	if err := openBrowser(address); err != nil {
		e.note("note: no browser could be opened; open the address yourself")
	}
}

// chosenFile holds the folder that was chosen on the page, for the next double click.
func chosenFile() (string, error) {
	settings, err := os.UserConfigDir()
	return filepath.Join(settings, "ellwand", "folder"), err
}

// rememberFolder for the next double click. It is no loss where that cannot be written.
func rememberFolder(folder string) {
	path, err := chosenFile()
	if err != nil || os.MkdirAll(filepath.Dir(path), 0o700) != nil {
		return
	}
	_ = os.WriteFile(path, []byte(folder), 0o600)
}

// homeFolder is where the page opens when the program was started by a double click: the
// folder that was chosen before, the one that its user has documents in, or else her own.
func homeFolder() string {
	if path, err := chosenFile(); err == nil {
		if text, err := os.ReadFile(path); err == nil && isFolder(string(text)) {
			return string(text)
		}
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return "."
	}
	if documents := filepath.Join(home, "Documents"); isFolder(documents) {
		return documents
	}
	return home
}

func isFolder(path string) bool {
	info, err := os.Stat(path)
	return err == nil && info.IsDir()
}
