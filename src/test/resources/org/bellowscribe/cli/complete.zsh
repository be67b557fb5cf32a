# Types a line and a tab into an interactive zsh, and prints the line as it is then.
# Arguments: the completion script, a file that is not there yet, the line.
zmodload zsh/zpty
zpty shell zsh -f -i
zpty -w shell "PS1=; autoload -Uz compinit; compinit -u -D; source ${(q)1}; zstyle ':completion:*' menu no"
zpty -w shell "told() { print -r -- \"\$BUFFER\" > ${(q)2}.part; mv ${(q)2}.part ${(q)2}; exit }; zle -N told"
zpty -w shell "tab() { zle complete-word; zle told }; zle -N tab; bindkey '^I' tab; setopt noautomenu; touch ${(q)2}.ready"
repeat 300; do [[ -e $2.ready ]] && break; sleep 0.1; done
sleep 0.3
zpty -w -n shell "$3"$'\t'
repeat 300; do [[ -e $2 ]] && break; sleep 0.1; done
cat $2
